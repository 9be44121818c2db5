package setwright.core.simulation.logger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.core.simulation.driven.DriveHistory;

/** Turns a drive into the table that a logger on board would have written. */
public final class Logger {
    private static final double USUAL_PRESSURE_PA = 80.0e5;
    /** These are no measurements and never drop out. */
    private static final Set<Quantity> STEADY =
            EnumSet.of(Quantity.TIME, Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER, Quantity.LAP_DISTANCE);

    private final DriveHistory history;
    private final CarSheet sheet;
    private final LoggerPlan plan;

    private Logger(DriveHistory history, CarSheet sheet, LoggerPlan plan) {
        this.history = history;
        this.sheet = sheet;
        this.plan = plan;
    }

    /**
     * Logs a drive; the same drive and plan give the same table.
     *
     * @param history  of a second or more
     * @param sheet    for the steering ratio and the greatest brake pressure (80 bar when it is not known)
     * @param plan     what is kept and how well
     */
    public static LoggedTable log(DriveHistory history, CarSheet sheet, LoggerPlan plan) {
        if (history.count() * history.stepS() < 1.0) {
            throw new IllegalArgumentException(
                    "a drive to log lasts a second or more, got " + history.count() * history.stepS() + " s");
        }
        return new Logger(history, sheet, plan).table();
    }

    private LoggedTable table() {
        Sensed sensed = new Sensed(history, sheet, plan);
        Receiver receiver = new Receiver(sensed, plan, random("satellites"));
        List<Quantity> kept = new ArrayList<>(plan.channels().with(plan.place()));
        if (plan.layout().shuffled()) {
            Collections.shuffle(kept, random("order"));
        }
        List<Gap> gaps = gaps(kept, sensed.rows());
        List<LoggedColumn> columns = new ArrayList<>();
        for (Quantity quantity : kept) {
            double[] values = switch (quantity) {
                case POSITION_X -> receiver.east();
                case POSITION_Y -> receiver.north();
                case LATITUDE -> receiver.latitude();
                case LONGITUDE -> receiver.longitude();
                default -> noisy(quantity, sensed.of(quantity));
            };
            columns.add(column(quantity, values, gaps));
        }
        return new LoggedTable(plan.rateHz(), columns);
    }

    private double[] noisy(Quantity quantity, double[] values) {
        double deviation = plan.noiseScale() * TypicalNoise.of(quantity);
        if (deviation == 0.0) {
            return values;
        }
        Random random = random(quantity.words());
        double[] out = values.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] += deviation * random.nextGaussian();
        }
        return out;
    }

    private LoggedColumn column(Quantity quantity, double[] values, List<Gap> gaps) {
        LoggedUnit unit = unit(quantity);
        boolean exact = unit == LoggedUnit.COUNT || unit == LoggedUnit.FINE_DEGREE || quantity == Quantity.TIME;
        int decimals = Math.max(0, unit.decimals(quantity) - (plan.layout().coarse() && !exact ? 1 : 0));
        double grid = Math.pow(10.0, decimals);
        double factor =
                sign(quantity) * (unit == LoggedUnit.BAR && quantity == Quantity.BRAKE ? greatestPressure() : 1.0);
        double[] out = new double[values.length];
        for (int row = 0; row < out.length; row++) {
            out[row] = Math.rint(unit.fromSi(factor * values[row]) * grid) / grid;
        }
        for (Gap gap : gaps) {
            if (!STEADY.contains(quantity) && (gap.all() || gap.quantity() == quantity)) {
                java.util.Arrays.fill(out, gap.from(), gap.to(), Double.NaN);
            }
        }
        return new LoggedColumn(quantity, Headers.of(quantity, plan.layout().names()), unit, decimals, out);
    }

    private double greatestPressure() {
        return greatestPressurePa(sheet);
    }

    static double greatestPressurePa(CarSheet sheet) {
        return sheet.brakePressureMaxPa().orElse(USUAL_PRESSURE_PA);
    }

    private double sign(Quantity quantity) {
        LoggerPlan.Layout layout = plan.layout();
        boolean left = switch (quantity) {
            case STEERING_WHEEL_ANGLE -> layout.steerLeft();
            case YAW_RATE -> layout.yawLeft();
            case LATERAL_ACCELERATION -> layout.acrossLeft();
            default -> true;
        };
        return left ? 1.0 : -1.0;
    }

    private LoggedUnit unit(Quantity quantity) {
        LoggerPlan.Layout layout = plan.layout();
        return switch (quantity) {
            case TIME -> LoggedUnit.SECOND;
            case SPEED,
                    WHEEL_SPEED_FRONT_LEFT,
                    WHEEL_SPEED_FRONT_RIGHT,
                    WHEEL_SPEED_REAR_LEFT,
                    WHEEL_SPEED_REAR_RIGHT -> layout.speed();
            case STEERING_WHEEL_ANGLE -> layout.angle();
            case YAW_RATE -> layout.yawRate();
            case THROTTLE -> layout.throttle();
            case BRAKE -> layout.brake();
            case LONGITUDINAL_ACCELERATION, LATERAL_ACCELERATION, VERTICAL_ACCELERATION -> layout.acceleration();
            case ENGINE_SPEED -> LoggedUnit.RPM;
            case LAP_DISTANCE, POSITION_X, POSITION_Y -> LoggedUnit.METRE;
            case LATITUDE, LONGITUDE -> LoggedUnit.FINE_DEGREE;
            case SUSPENSION_FRONT_LEFT, SUSPENSION_FRONT_RIGHT, SUSPENSION_REAR_LEFT, SUSPENSION_REAR_RIGHT ->
                layout.travel();
            case RIDE_HEIGHT_FRONT, RIDE_HEIGHT_REAR -> LoggedUnit.MILLIMETRE;
            case BRAKE_PRESSURE_FRONT, BRAKE_PRESSURE_REAR -> LoggedUnit.BAR;
            case FUEL_MASS -> LoggedUnit.KILOGRAM;
            default -> LoggedUnit.COUNT;
        };
    }

    /** Rows without values, of one measured quantity or of all. */
    private record Gap(int from, int to, Quantity quantity, boolean all) {}

    private List<Gap> gaps(List<Quantity> kept, int rows) {
        List<Gap> gaps = new ArrayList<>();
        LoggerPlan.DropOuts dropOuts = plan.dropOuts();
        List<Quantity> measured = kept.stream()
                .filter(quantity -> !STEADY.contains(quantity))
                .sorted()
                .toList();
        Random random = random("drop-outs");
        double chance = dropOuts.perMinute() / 60.0 / plan.rateHz();
        for (int row = 0; row < rows; row++) {
            if (random.nextDouble() < chance) {
                int length = 1 + (int) (random.nextDouble() * dropOuts.longestS() * plan.rateHz());
                Quantity quantity = measured.get(random.nextInt(measured.size()));
                gaps.add(new Gap(row, Math.min(row + length, rows), quantity, random.nextBoolean()));
            }
        }
        return gaps;
    }

    /** A source of its own for each purpose: a channel more or less leaves the others' noise as it is. */
    private Random random(String purpose) {
        return new Random(plan.seed() * 1_000_003L + purpose.hashCode());
    }
}
