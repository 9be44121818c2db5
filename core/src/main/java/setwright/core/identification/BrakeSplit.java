package setwright.core.identification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import setwright.core.car.body.Body;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/**
 * Front share of the brake force from the slip of the wheels.
 *
 * <p>At small slip a tyre's longitudinal force is its stiffness times its slip, and the stiffness is about in proportion to the
 * load (1987 published set: 283 N per percent and kN at 2 kN, 359 at 8 kN); so the share is {@code N_f k_f / (N_f k_f + N_r
 * k_r)}. Speed is taken from the laps, and each axle's rolling radius from where nothing brakes or drives.
 *
 * @param share   front share, 0..1
 * @param spread  standard deviation, including what unlike tyres at the two axles make
 */
record BrakeSplit(double share, double spread) {
    private static final double LEAST_BRAKE = 0.15;
    private static final double MOST_LATERAL = 2.0;
    private static final double LEAST_SPEED = 12.0;
    private static final double LEAST_SLIP = 0.004;
    private static final double MOST_SLIP = 0.05;
    private static final int LEAST_SAMPLES = 60;
    /** Tyres of unlike width differ in stiffness over load by up to a tenth: that much of the ratio of the axles' forces. */
    private static final double UNLIKE_TYRES = 0.1;

    /** Returns the share, or a value that is not a number where wheel speeds are missing or braking is too gentle to tell. */
    static BrakeSplit of(Stint stint, HandlingTrace trace, Body body) {
        BrakeSplit unknown = new BrakeSplit(Double.NaN, Double.NaN);
        List<Quantity> wheels = List.of(
                Quantity.WHEEL_SPEED_FRONT_LEFT,
                Quantity.WHEEL_SPEED_FRONT_RIGHT,
                Quantity.WHEEL_SPEED_REAR_LEFT,
                Quantity.WHEEL_SPEED_REAR_RIGHT);
        if (!wheels.stream().allMatch(stint.recording()::has)) {
            return unknown;
        }
        double[][] speed = wheels.stream()
                .map(wheel -> stint.recording().channel(wheel).toArray())
                .toArray(double[][]::new);
        double frontFree = free(speed[0], speed[1], stint, trace);
        double rearFree = free(speed[2], speed[3], stint, trace);
        List<Double> shares = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                double v = trace.speed().get(i);
                boolean braking = trace.brake().get(i) > LEAST_BRAKE
                        && Math.abs(trace.lateral().get(i)) < MOST_LATERAL
                        && v > LEAST_SPEED;
                double front = 1.0 - 0.5 * (speed[0][i] + speed[1][i]) / v / frontFree;
                double rear = 1.0 - 0.5 * (speed[2][i] + speed[3][i]) / v / rearFree;
                if (braking && front + rear > LEAST_SLIP && front < MOST_SLIP && rear < MOST_SLIP) {
                    double transfer = -body.massKg() * trace.forward().get(i) * body.heightM() / body.wheelbaseM();
                    double frontForce = (2.0 * body.staticFrontN() + transfer) * front;
                    double rearForce = (2.0 * body.staticRearN() - transfer) * rear;
                    shares.add(frontForce / (frontForce + rearForce));
                }
            }
        }
        if (shares.size() < LEAST_SAMPLES) {
            return unknown;
        }
        double[] values = shares.stream().mapToDouble(Double::doubleValue).toArray();
        double share = Robust.median(values);
        double scatter = Robust.scaledMad(values) / Math.sqrt(values.length / 10.0);
        return new BrakeSplit(share, Math.hypot(scatter, UNLIKE_TYRES * share * (1.0 - share)));
    }

    /** Wheel speed over speed where the wheels roll freely: scale of the sensor and rolling radius. */
    private static double free(double[] left, double[] right, Stint stint, HandlingTrace trace) {
        double[] ratios = new double[left.length];
        Arrays.fill(ratios, Double.NaN);
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                boolean rolling = trace.brake().get(i) < 0.02
                        && Math.abs(trace.forward().get(i)) < 1.5
                        && Math.abs(trace.lateral().get(i)) < MOST_LATERAL
                        && trace.speed().get(i) > LEAST_SPEED;
                ratios[i] = rolling ? 0.5 * (left[i] + right[i]) / trace.speed().get(i) : Double.NaN;
            }
        }
        double[] known = Robust.finite(ratios);
        return known.length == 0 ? 1.0 : Robust.median(known);
    }
}
