package setwright.core.simulation.logger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import setwright.core.car.CarSheet;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/*
 * Design note. Noise of each sensor is white and of the size of what club loggers show (common practice): speed 0.2 km/h, steering
 * 0.2 deg at the wheel, yaw rate 0.3 deg/s, accelerations 0.015 g, pedals 0.3 %, wheel speeds 0.2 km/h, suspension 0.2 mm; position
 * 0.05 m white and 0.3 m that drifts within ten seconds.
 */

/** Records a drive. */
public final class Logger {
    private static final double GRAVITY = 9.80665;
    private static final double TRIGGER_S = 0.1;
    private static final double PRESSURE_BAR = 80.0;
    private static final double DRIFT_S = 10.0;
    private static final double DRIFT_M = 0.3;
    private static final double ORIGIN_LATITUDE = 47.3;
    private static final double ORIGIN_LONGITUDE = -38.6;
    private static final double EARTH_M = 6_371_008.8;

    private final Sampler sampler;
    private final CarSheet sheet;
    private final LoggerPlan plan;
    private final Random random;
    private final boolean[] gap;
    private final List<LoggedColumn> columns = new ArrayList<>();

    private Logger(DriveHistory history, CarSheet sheet, LoggerPlan plan) {
        this.sampler = new Sampler(history, plan.rateHz());
        this.sheet = sheet;
        this.plan = plan;
        this.random = new Random(plan.seed());
        this.gap = gaps();
    }

    /** Records a drive in a car; only ratios and ranges of its sheet enter. */
    public static LoggedTable record(DriveHistory history, CarSheet sheet, LoggerPlan plan) {
        Logger logger = new Logger(history, sheet, plan);
        logger.minimal();
        if (plan.channels().compareTo(ChannelSet.USUAL) >= 0) {
            logger.usual();
        }
        if (plan.channels() == ChannelSet.FULL) {
            logger.full();
        }
        return new LoggedTable(plan.rateHz(), logger.columns);
    }

    private void minimal() {
        double[] time = new double[sampler.rows()];
        Arrays.setAll(time, sampler::timeS);
        columns.add(new LoggedColumn("time", "s", 4, time));
        speed("speed", sampler.mean(Signal.FORWARD_SPEED), 0.055);
        double[] steer = sampler.mean(Signal.STEER);
        for (int i = 0; i < steer.length; i++) {
            steer[i] = steer[i] * sheet.steeringRatio() + plan.steeringZeroRad();
        }
        angle("steering", steer, plan.steerRight(), "deg", "rad", 0.0035, 2);
        double[] yaw = plus(sampler.mean(Signal.YAW_RATE), plan.yawBias());
        angle("yaw_rate", yaw, plan.yawRight(), "deg/s", "rad/s", 0.005, 2);
        pedal("throttle", sampler.mean(Signal.THROTTLE));
        double[] brake = sampler.mean(Signal.BRAKE);
        if (plan.otherUnits()) {
            pedal("brake", brake);
        } else {
            double most = sheet.brakePressureMaxPa().orElse(PRESSURE_BAR * 1.0e5) / 1.0e5;
            add("brake_pressure", "bar", noisy(times(brake, most), 0.003 * most), 1);
        }
        columns.add(new LoggedColumn("lap_trigger", "1", 0, trigger(sampler.held(Signal.LAP))));
    }

    private void usual() {
        double[] lateral = plus(sampler.mean(Signal.LATERAL_ACCELERATION), plan.lateralBias());
        acceleration("acc_lateral", times(lateral, plan.lateralRight() ? -1.0 : 1.0));
        acceleration("acc_longitudinal", plus(sampler.mean(Signal.FORWARD_ACCELERATION), plan.forwardBias()));
        add("gear", "1", sampler.held(Signal.GEAR), 0);
        double[] engine = times(sampler.mean(Signal.ENGINE_SPEED), 30.0 / Math.PI);
        add("engine_speed", "rpm", noisy(engine, 15.0), 0);
        add("lap", "1", sampler.held(Signal.LAP), 0);
        position();
    }

    private void full() {
        String[] corner = {"fl", "fr", "rl", "rr"};
        Signal[] turning = {
            Signal.WHEEL_SPEED_FRONT_LEFT,
            Signal.WHEEL_SPEED_FRONT_RIGHT,
            Signal.WHEEL_SPEED_REAR_LEFT,
            Signal.WHEEL_SPEED_REAR_RIGHT
        };
        Signal[] travel = {
            Signal.SUSPENSION_FRONT_LEFT,
            Signal.SUSPENSION_FRONT_RIGHT,
            Signal.SUSPENSION_REAR_LEFT,
            Signal.SUSPENSION_REAR_RIGHT
        };
        for (int wheel = 0; wheel < 4; wheel++) {
            speed("wheel_speed_" + corner[wheel], sampler.mean(turning[wheel]), 0.055);
        }
        for (int wheel = 0; wheel < 4; wheel++) {
            double ratio = wheel < 2 ? sheet.motionRatioFront() : sheet.motionRatioRear();
            double[] millimetres = times(sampler.mean(travel[wheel]), 1000.0 * ratio);
            add("suspension_" + corner[wheel], "mm", noisy(millimetres, 0.2), 2);
        }
        add("fuel", "kg", noisy(sampler.mean(Signal.FUEL), 0.02), 2);
    }

    private void position() {
        if (plan.position() == PositionKind.NONE) {
            return;
        }
        double[] x = drifting(sampler.mean(Signal.X));
        double[] y = drifting(sampler.mean(Signal.Y));
        if (plan.position() == PositionKind.PLANE) {
            add("pos_x", "m", x, 2);
            add("pos_y", "m", y, 2);
            return;
        }
        double degrees = 180.0 / Math.PI / EARTH_M;
        double parallel = Math.cos(Math.toRadians(ORIGIN_LATITUDE));
        add("latitude", "deg", plus(times(y, degrees), ORIGIN_LATITUDE), 7);
        add("longitude", "deg", plus(times(x, degrees / parallel), ORIGIN_LONGITUDE), 7);
    }

    private void speed(String name, double[] mps, double deviation) {
        double[] values = noisy(times(mps, plan.speedScale()), deviation);
        add(name, plan.otherUnits() ? "m/s" : "km/h", plan.otherUnits() ? values : times(values, 3.6), 2);
    }

    private void angle(
            String name, double[] rad, boolean right, String degrees, String radians, double deviation, int decimals) {
        double[] values = noisy(times(rad, right ? -1.0 : 1.0), deviation);
        if (plan.otherUnits()) {
            add(name, radians, values, decimals + 2);
        } else {
            add(name, degrees, times(values, 180.0 / Math.PI), decimals);
        }
    }

    private void acceleration(String name, double[] mps2) {
        double[] values = noisy(mps2, 0.15);
        add(name, plan.otherUnits() ? "m/s2" : "g", plan.otherUnits() ? values : times(values, 1.0 / GRAVITY), 3);
    }

    private void pedal(String name, double[] share) {
        double[] values = noisy(share, 0.003);
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.max(0.0, Math.min(values[i], 1.0));
        }
        add(
                name,
                plan.otherUnits() ? "1" : "%",
                plan.otherUnits() ? values : times(values, 100.0),
                plan.otherUnits() ? 3 : 1);
    }

    private void add(String name, String unit, double[] values, int decimals) {
        for (int i = 0; i < values.length; i++) {
            values[i] = gap[i] ? Double.NaN : values[i];
        }
        columns.add(new LoggedColumn(name, unit, decimals, values));
    }

    /** The trigger is 1 for a tenth of a second after the start line. */
    private double[] trigger(double[] lap) {
        double[] out = new double[lap.length];
        int left = 0;
        for (int i = 1; i < lap.length; i++) {
            left = lap[i] > lap[i - 1] ? (int) Math.ceil(TRIGGER_S * plan.rateHz()) : left - 1;
            out[i] = left > 0 ? 1.0 : 0.0;
        }
        return out;
    }

    private boolean[] gaps() {
        boolean[] out = new boolean[sampler.rows()];
        double perRow = plan.dropOutsPerMin() / 60.0 / plan.rateHz();
        for (int i = 0; i < out.length; i++) {
            if (random.nextDouble() < perRow) {
                int length = (int) ((0.1 + 0.4 * random.nextDouble()) * plan.rateHz());
                Arrays.fill(out, i, Math.min(out.length, i + length), true);
                i += length;
            }
        }
        return out;
    }

    private double[] noisy(double[] values, double deviation) {
        for (int i = 0; i < values.length; i++) {
            values[i] += plan.noise() * deviation * random.nextGaussian();
        }
        return values;
    }

    private double[] drifting(double[] metres) {
        double share = 1.0 / (DRIFT_S * plan.rateHz());
        double drift = DRIFT_M * random.nextGaussian();
        for (int i = 0; i < metres.length; i++) {
            drift += -share * drift + Math.sqrt(2.0 * share) * DRIFT_M * random.nextGaussian();
            metres[i] += plan.noise() * (drift + 0.05 * random.nextGaussian());
        }
        return metres;
    }

    private static double[] times(double[] values, double factor) {
        for (int i = 0; i < values.length; i++) {
            values[i] *= factor;
        }
        return values;
    }

    private static double[] plus(double[] values, double more) {
        for (int i = 0; i < values.length; i++) {
            values[i] += more;
        }
        return values;
    }
}
