package setwright.core.handling;

import java.util.Arrays;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.ZeroPhaseLowPass;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/**
 * The filtered signals that balance is made of; arrays of the recording's length, SI units, ISO 8855 signs.
 *
 * <p>The cut-off of 4 Hz lies above what a car's body does (yaw and roll modes of 1 to 3 Hz, common practice) and above
 * what hands do on purpose, and below wheel hop.
 */
@SuppressWarnings("ArrayRecordComponent") // package-private, never changed after it is built
record Motion(
        double[] speed,
        double[] steer,
        double[] yawRate,
        double[] yawAcceleration,
        double[] lateral,
        double[] forward,
        double[] brake,
        double[] throttle,
        boolean yawMeasured) {

    private static final double CUT_OFF_HZ = 4.0;
    private static final double PEDAL_CUT_OFF_HZ = 10.0;
    private static final double DERIVATIVE_WINDOW_S = 0.4;
    private static final double LEAST_SPEED_MPS = 3.0;
    /** Slowing by more than drag and engine braking together usually do, m/s². */
    private static final double COASTING_MPS2 = 1.5;

    static Motion of(Stint stint, CarSheet sheet) {
        Recording recording = stint.recording();
        double rate = recording.sampleRateHz();
        double step = recording.stepS();
        double[] speed = filtered(recording, Quantity.SPEED, CUT_OFF_HZ, rate);
        double[] steer = roadWheelAngle(recording, sheet, rate);
        double[] forward = recording.has(Quantity.LONGITUDINAL_ACCELERATION)
                ? filtered(recording, Quantity.LONGITUDINAL_ACCELERATION, CUT_OFF_HZ, rate)
                : LocalPolynomial.quadraticOver(DERIVATIVE_WINDOW_S, step).derivative(speed, step);
        boolean yawMeasured = recording.has(Quantity.YAW_RATE);
        double[] yawRate;
        double[] lateral;
        if (yawMeasured) {
            yawRate = filtered(recording, Quantity.YAW_RATE, CUT_OFF_HZ, rate);
            lateral = recording.has(Quantity.LATERAL_ACCELERATION)
                    ? filtered(recording, Quantity.LATERAL_ACCELERATION, CUT_OFF_HZ, rate)
                    : product(speed, yawRate);
        } else if (recording.has(Quantity.LATERAL_ACCELERATION)) {
            lateral = filtered(recording, Quantity.LATERAL_ACCELERATION, CUT_OFF_HZ, rate);
            yawRate = quotient(lateral, speed);
        } else {
            yawRate = pathRate(stint, speed);
            lateral = product(speed, yawRate);
        }
        double[] yawAcceleration =
                LocalPolynomial.quadraticOver(DERIVATIVE_WINDOW_S, step).derivative(yawRate, step);
        return new Motion(
                speed,
                steer,
                yawRate,
                yawAcceleration,
                lateral,
                forward,
                pedal(recording, Quantity.BRAKE, forward, rate),
                pedal(recording, Quantity.THROTTLE, forward, rate),
                yawMeasured);
    }

    /** This motion with the steering divided by a factor. */
    Motion steeredBy(double factor) {
        double[] scaled = Arrays.stream(steer).map(angle -> angle / factor).toArray();
        return new Motion(speed, scaled, yawRate, yawAcceleration, lateral, forward, brake, throttle, yawMeasured);
    }

    /** The part of the longitudinal acceleration that brakes or engine put through the tyres, m/s². */
    double tyre(int i) {
        return Pedals.throughTyres(brake[i], throttle[i], forward[i]);
    }

    private static double[] roadWheelAngle(Recording recording, CarSheet sheet, double rate) {
        if (recording.has(Quantity.STEERING_WHEEL_ANGLE)) {
            double[] wheel = filtered(recording, Quantity.STEERING_WHEEL_ANGLE, CUT_OFF_HZ, rate);
            return Arrays.stream(wheel)
                    .map(angle -> angle / sheet.steeringRatio())
                    .toArray();
        }
        return filtered(recording, Quantity.ROAD_WHEEL_ANGLE, CUT_OFF_HZ, rate);
    }

    /** A pedal that was not recorded is read off the acceleration it causes. */
    private static double[] pedal(Recording recording, Quantity quantity, double[] forward, double rate) {
        if (recording.has(quantity)) {
            return filtered(recording, quantity, PEDAL_CUT_OFF_HZ, rate);
        }
        boolean brake = quantity == Quantity.BRAKE;
        double[] demand = Arrays.stream(forward)
                .map(a -> Math.max(0.0, brake ? -a - COASTING_MPS2 : a))
                .toArray();
        double most = Arrays.stream(demand).filter(Double::isFinite).max().orElse(0.0);
        return Arrays.stream(demand).map(a -> most > 0.0 ? a / most : 0.0).toArray();
    }

    private static double[] filtered(Recording recording, Quantity quantity, double cutOffHz, double rate) {
        double[] samples = recording.channel(quantity).toArray();
        return cutOffHz < 0.4 * rate
                ? ZeroPhaseLowPass.butterworth(2, cutOffHz, rate).apply(samples)
                : samples;
    }

    private static double[] product(double[] speed, double[] yawRate) {
        double[] out = new double[speed.length];
        Arrays.setAll(out, i -> speed[i] * yawRate[i]);
        return out;
    }

    private static double[] quotient(double[] lateral, double[] speed) {
        double[] out = new double[speed.length];
        Arrays.setAll(out, i -> lateral[i] / Math.max(speed[i], LEAST_SPEED_MPS));
        return out;
    }

    private static double[] pathRate(Stint stint, double[] speed) {
        double[] out = new double[speed.length];
        Arrays.setAll(out, i -> {
            double station = stint.station().get(i);
            return Double.isNaN(station)
                    ? Double.NaN
                    : speed[i] * stint.circuit().line().curvatureAt(station);
        });
        return out;
    }
}
