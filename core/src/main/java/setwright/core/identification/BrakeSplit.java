package setwright.core.identification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import setwright.core.car.body.Body;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.MountedTyre;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/**
 * Front share of the brake force from the slip of the wheels.
 *
 * <p>Each axle's force is read off its tyres' curve at the slip and at the load that deceleration and downforce give it; only the
 * ratio of both counts. What the engine brakes at the driven axle is taken out. Speed is taken from the laps, and each axle's
 * rolling radius from where nothing brakes or drives.
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

    /** What an engine brakes differs by this share between engines, and with how the driver blips it. */
    private static final double ENGINE_DOUBT = 0.5;

    /** Returns the share, or a value that is not a number where wheel speeds are missing or braking is too gentle to tell. */
    static BrakeSplit of(Stint stint, HandlingTrace trace, CarModel car) {
        Body body = car.body();
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
        List<Double> engines = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                double v = trace.speed().get(i);
                boolean braking = trace.brake().get(i) > LEAST_BRAKE
                        && Math.abs(trace.lateral().get(i)) < MOST_LATERAL
                        && v > LEAST_SPEED;
                if (!braking) {
                    continue;
                }
                double front = 1.0 - 0.5 * (speed[0][i] + speed[1][i]) / v / frontFree;
                double rear = 1.0 - 0.5 * (speed[2][i] + speed[3][i]) / v / rearFree;
                if (front + rear > LEAST_SLIP && front < MOST_SLIP && rear < MOST_SLIP) {
                    double transfer = -body.massKg() * trace.forward().get(i) * body.heightM() / body.wheelbaseM();
                    double frontForce = force(
                            car.front(), body.staticFrontN() + 0.5 * (transfer + car.liftFrontN(v, 0.0, 0.0)), front);
                    double rearForce =
                            force(car.rear(), body.staticRearN() + 0.5 * (car.liftRearN(v, 0.0, 0.0) - transfer), rear);
                    double whole = -body.massKg() * trace.forward().get(i) - car.resistanceN(v);
                    double engine = car.engineBrakingNm()
                            * car.powertrain().leverage(car.powertrain().lowestGear(v));
                    if (whole > 3.0 * engine) {
                        double frontBrake = whole * frontForce / (frontForce + rearForce) - engine * car.driveFront();
                        shares.add(frontBrake / (whole - engine));
                        engines.add(engine / whole);
                    }
                }
            }
        }
        if (shares.size() < LEAST_SAMPLES) {
            return unknown;
        }
        double[] values = shares.stream().mapToDouble(Double::doubleValue).toArray();
        double share = Robust.median(values);
        double scatter = Robust.scaledMad(values) / Math.sqrt(values.length / 10.0);
        double engine =
                Robust.median(engines.stream().mapToDouble(Double::doubleValue).toArray());
        double unlike = UNLIKE_TYRES * share * (1.0 - share);
        double axle = car.driveFront() > 0.5 ? 1.0 - share : share;
        return new BrakeSplit(share, Math.hypot(scatter, Math.hypot(unlike, ENGINE_DOUBT * engine * axle)));
    }

    /** Braking force of one tyre at a slip, N. */
    private static double force(MountedTyre tyre, double loadN, double slip) {
        return tyre.tyre().longitudinal(slip, Math.max(loadN, 0.0), tyre.inclination(), tyre.pressure());
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
