package setwright.core.simulation.logger;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.sums.Gravity;
import setwright.core.numerics.ZeroPhaseLowPass;
import setwright.core.recording.Quantity;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/** What sensors feel, in SI units and signs of ISO 8855 at a logger's rate: with constant errors, without noise. */
final class Sensed {
    /** Of the logger's rate: leaves the frequencies that half the rate can hold, less the filter's skirt. */
    private static final double CUTOFF_SHARE = 0.35;

    private static final double PULSE_S = 0.1;

    private final DriveHistory history;
    private final CarSheet sheet;
    private final LoggerPlan plan;
    private final int rows;
    private final Map<Signal, double[]> smoothed = new EnumMap<>(Signal.class);

    Sensed(DriveHistory history, CarSheet sheet, LoggerPlan plan) {
        this.history = history;
        this.sheet = sheet;
        this.plan = plan;
        this.rows = (int) Math.floor((history.count() - 1) * history.stepS() * plan.rateHz() + 1.0e-9) + 1;
    }

    int rows() {
        return rows;
    }

    /** Returns the samples of a quantity other than a position. */
    double[] of(Quantity quantity) {
        LoggerPlan.Errors errors = plan.errors();
        return switch (quantity) {
            case TIME -> times();
            case SPEED -> speed(quantity);
            case STEERING_WHEEL_ANGLE ->
                shifted(signal(Signal.STEER, quantity), sheet.steeringRatio(), errors.steeringZeroRad());
            case THROTTLE -> signal(Signal.THROTTLE, quantity);
            case BRAKE -> signal(Signal.BRAKE, quantity);
            case GEAR -> held(Signal.GEAR);
            case ENGINE_SPEED -> signal(Signal.ENGINE_SPEED, quantity);
            case LONGITUDINAL_ACCELERATION -> along(quantity);
            case LATERAL_ACCELERATION -> across(quantity);
            case VERTICAL_ACCELERATION -> signal(Signal.VERTICAL_ACCELERATION, quantity);
            case YAW_RATE -> shifted(signal(Signal.YAW_RATE, quantity), 1.0, errors.yawBiasRadPerS());
            case LAP_NUMBER -> held(Signal.LAP);
            case LAP_TRIGGER -> pulses();
            case LAP_DISTANCE -> lapDistance();
            case WHEEL_SPEED_FRONT_LEFT -> signal(Signal.WHEEL_SPEED_FRONT_LEFT, quantity);
            case WHEEL_SPEED_FRONT_RIGHT -> signal(Signal.WHEEL_SPEED_FRONT_RIGHT, quantity);
            case WHEEL_SPEED_REAR_LEFT -> signal(Signal.WHEEL_SPEED_REAR_LEFT, quantity);
            case WHEEL_SPEED_REAR_RIGHT -> signal(Signal.WHEEL_SPEED_REAR_RIGHT, quantity);
            case SUSPENSION_FRONT_LEFT -> signal(Signal.SUSPENSION_FRONT_LEFT, quantity);
            case SUSPENSION_FRONT_RIGHT -> signal(Signal.SUSPENSION_FRONT_RIGHT, quantity);
            case SUSPENSION_REAR_LEFT -> signal(Signal.SUSPENSION_REAR_LEFT, quantity);
            case SUSPENSION_REAR_RIGHT -> signal(Signal.SUSPENSION_REAR_RIGHT, quantity);
            case FUEL_MASS -> signal(Signal.FUEL, quantity);
            case RIDE_HEIGHT_FRONT ->
                height("front_ride_height", Signal.SUSPENSION_FRONT_LEFT, Signal.SUSPENSION_FRONT_RIGHT, quantity);
            case RIDE_HEIGHT_REAR ->
                height("rear_ride_height", Signal.SUSPENSION_REAR_LEFT, Signal.SUSPENSION_REAR_RIGHT, quantity);
            case BRAKE_PRESSURE_FRONT -> pressure(quantity, frontPressureShare());
            case BRAKE_PRESSURE_REAR -> pressure(quantity, 1.0 - frontPressureShare());
            default -> throw new IllegalArgumentException("no sensor for " + quantity.words());
        };
    }

    /** What the sheet says at rest, less how far the body has come down between the wheels. */
    private double[] height(String item, Signal left, Signal right, Quantity quantity) {
        double rest = inSi(item)
                .orElseThrow(
                        () -> new IllegalArgumentException("no sensor for " + quantity.words() + " without " + item));
        double[] one = signal(left, quantity);
        double[] other = signal(right, quantity);
        double[] out = new double[rows];
        Arrays.setAll(out, row -> rest - 0.5 * (one[row] + other[row]));
        return out;
    }

    /** The pedal's pressure is the mean of both circuits', as with a balance bar. */
    private double[] pressure(Quantity quantity, double share) {
        double most = 2.0 * share * Logger.greatestPressurePa(sheet);
        return shifted(signal(Signal.BRAKE, quantity), most, 0.0);
    }

    /** Of both pressures' sum; by the force that the sheet wants and the torques that a pressure makes, else of the force alone. */
    private double frontPressureShare() {
        double force = inSi("brake_bias_front").orElse(0.5);
        double front = force / sheet.detail().front().brakeTorqueNmPerPa().orElse(1.0);
        double rear = (1.0 - force) / sheet.detail().rear().brakeTorqueNmPerPa().orElse(1.0);
        return front / (front + rear);
    }

    private Optional<Double> inSi(String item) {
        return SetupCatalogue.find(item).flatMap(kind -> sheet.item(item).map(kind::toSi));
    }

    private double[] times() {
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = row / plan.rateHz();
        }
        return out;
    }

    private double[] speed(Quantity quantity) {
        double[] forward = signal(Signal.FORWARD_SPEED, quantity);
        double[] lateral = signal(Signal.LATERAL_SPEED, quantity);
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = plan.errors().speedScale() * Math.hypot(forward[row], lateral[row]);
        }
        return out;
    }

    /** A sensor that looks to the left feels a part of what is across, and one tilted nose up feels gravity along. */
    private double[] along(Quantity quantity) {
        LoggerPlan.Errors errors = plan.errors();
        double[] forward = signal(Signal.FORWARD_ACCELERATION, quantity);
        double[] lateral = signal(Signal.LATERAL_ACCELERATION, quantity);
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = Math.cos(errors.mountPitchRad())
                            * (Math.cos(errors.mountYawRad()) * forward[row]
                                    + Math.sin(errors.mountYawRad()) * lateral[row])
                    + Math.sin(errors.mountPitchRad()) * Gravity.STANDARD_MPS2;
        }
        return out;
    }

    private double[] across(Quantity quantity) {
        LoggerPlan.Errors errors = plan.errors();
        double[] forward = signal(Signal.FORWARD_ACCELERATION, quantity);
        double[] lateral = signal(Signal.LATERAL_ACCELERATION, quantity);
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = Math.cos(errors.mountRollRad())
                            * (Math.cos(errors.mountYawRad()) * lateral[row]
                                    - Math.sin(errors.mountYawRad()) * forward[row])
                    + Math.sin(errors.mountRollRad()) * Gravity.STANDARD_MPS2;
        }
        return out;
    }

    private double[] pulses() {
        double[] laps = history.column(Signal.LAP);
        double[] out = new double[rows];
        double last = Double.NEGATIVE_INFINITY;
        int from = 1;
        for (int row = 0; row < rows; row++) {
            int sample = sampleAt(row);
            for (; from <= sample; from++) {
                if (laps[from] != laps[from - 1]) {
                    last = from * history.stepS();
                }
            }
            // at least one row, however slow the logger
            out[row] = row / plan.rateHz() - last < Math.max(PULSE_S, 1.0 / plan.rateHz()) ? 1.0 : 0.0;
        }
        return out;
    }

    /** As loggers do it: the speed read, summed up since the last pulse. */
    private double[] lapDistance() {
        double[] speed = speed(Quantity.LAP_DISTANCE);
        double[] laps = held(Signal.LAP);
        double[] out = new double[rows];
        out[0] = history.at(Signal.STATION, 0);
        for (int row = 1; row < rows; row++) {
            out[row] = laps[row] != laps[row - 1] ? 0.0 : out[row - 1] + speed[row - 1] / plan.rateHz();
        }
        return out;
    }

    private double[] held(Signal signal) {
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = history.at(signal, sampleAt(row));
        }
        return out;
    }

    private int sampleAt(int row) {
        return (int) Math.min(Math.floor(row / plan.rateHz() / history.stepS() + 1.0e-9), history.count() - 1.0);
    }

    private double[] signal(Signal signal, Quantity quantity) {
        double late = plan.lag()
                .filter(lag -> lag.quantity() == quantity)
                .map(LoggerPlan.Lag::seconds)
                .orElse(0.0);
        double[] out = new double[rows];
        for (int row = 0; row < rows; row++) {
            out[row] = at(signal, row / plan.rateHz() - late);
        }
        return out;
    }

    /** Returns a signal behind the anti-alias filter at a time, by cubic interpolation (Catmull and Rom). */
    double at(Signal signal, double timeS) {
        double[] values = smoothed.computeIfAbsent(signal, this::smooth);
        double position = Math.max(0.0, Math.min(timeS / history.stepS(), values.length - 1.0));
        int i = (int) Math.min(Math.floor(position), values.length - 2.0);
        double u = position - i;
        double p0 = values[Math.max(i - 1, 0)];
        double p1 = values[i];
        double p2 = values[i + 1];
        double p3 = values[Math.min(i + 2, values.length - 1)];
        return p1 + 0.5 * u * (p2 - p0 + u * (2.0 * p0 - 5.0 * p1 + 4.0 * p2 - p3 + u * (3.0 * (p1 - p2) + p3 - p0)));
    }

    private double[] smooth(Signal signal) {
        double[] values = history.column(signal);
        double rate = 1.0 / history.stepS();
        double cutoff = CUTOFF_SHARE * plan.rateHz();
        return cutoff < 0.45 * rate
                ? ZeroPhaseLowPass.butterworth(4, cutoff, rate).apply(values)
                : values;
    }

    private static double[] shifted(double[] values, double factor, double offset) {
        double[] out = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            out[i] = factor * values[i] + offset;
        }
        return out;
    }
}
