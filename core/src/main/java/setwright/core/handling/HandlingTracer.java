package setwright.core.handling;

import java.util.Arrays;
import setwright.core.car.BalancedCar;
import setwright.core.car.BalancedCarFit;
import setwright.core.car.CarSheet;
import setwright.core.car.GripLimit;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/**
 * Computes the balance angle of a stint and the balance that a well-balanced car would have shown in the same motion.
 *
 * <p>The balance angle is exact for both axles whatever the tyre: {@code B = alpha_f - alpha_r = delta - L r / v}, the
 * kinematics of the single-track model (ISO 8855 signs; Milliken and Milliken, Race Car Vehicle Dynamics, SAE 1995,
 * chapter 5, value from memory).
 */
public final class HandlingTracer {
    private static final double LEAST_SPEED_MPS = 5.0;
    private static final double STRAIGHT_MPS2 = 1.0;
    private static final double QUIET_SPEED_MPS = 20.0;

    private HandlingTracer() {}

    /**
     * Traces a stint.
     *
     * @throws NoSteering when the recording has neither steering wheel nor road wheel angle
     */
    public static HandlingTrace trace(Stint stint, CarSheet sheet) {
        if (!stint.recording().has(Quantity.STEERING_WHEEL_ANGLE)
                && !stint.recording().has(Quantity.ROAD_WHEEL_ANGLE)) {
            throw new NoSteering(stint.recording().name());
        }
        boolean[] judged = judged(stint);
        Motion recorded = Motion.of(stint, sheet);
        GripLimit grip = GripLimit.fit(
                only(judged, recorded.speed()),
                only(judged, recorded.lateral()),
                only(judged, recorded.forward()),
                sheet.downforce());
        SteeringScale measured = scale(recorded, grip, judged, stint, sheet);
        boolean assumed = sheet.assumes("steering_ratio") && Double.isFinite(measured.error());
        SteeringScale steering = assumed ? measured.out() : measured;
        Motion motion = assumed ? recorded.steeredBy(steering.factor()) : recorded;
        int count = motion.speed().length;
        double[] balance = new double[count];
        double[] yawRise = new double[count];
        double[] inward = new double[count];
        double[] tyre = new double[count];
        for (int i = 0; i < count; i++) {
            double side = Math.signum(motion.lateral()[i]);
            balance[i] = side * angle(motion, sheet, i);
            yawRise[i] = side * motion.yawAcceleration()[i];
            inward[i] = Math.abs(motion.lateral()[i]);
            tyre[i] = motion.tyre(i);
        }
        BalancedCar car = BalancedCarFit.fit(
                sheet,
                grip,
                only(judged, motion.speed()),
                only(judged, inward),
                only(judged, motion.forward()),
                only(judged, tyre),
                only(judged, yawRise),
                only(judged, balance));
        double[] use = new double[count];
        for (int i = 0; i < count; i++) {
            use[i] = Math.hypot(inward[i], Math.min(motion.forward()[i], 0.0)) / grip.at(motion.speed()[i]);
        }
        Channel measuredBalance = Channel.of(balance);
        return new HandlingTrace(
                        Channel.of(motion.speed()),
                        Channel.of(motion.steer()),
                        Channel.of(motion.yawRate()),
                        Channel.of(motion.yawAcceleration()),
                        Channel.of(motion.lateral()),
                        Channel.of(motion.forward()),
                        Channel.of(motion.brake()),
                        Channel.of(motion.throttle()),
                        measuredBalance,
                        measuredBalance, // its own reference comes with the car
                        Channel.of(use),
                        car,
                        noise(motion, sheet),
                        steering,
                        motion.yawMeasured())
                .against(car);
    }

    private static SteeringScale scale(Motion motion, GripLimit grip, boolean[] judged, Stint stint, CarSheet sheet) {
        double[] needed = new double[motion.speed().length];
        double[] limit = new double[needed.length];
        double[] station = new double[needed.length];
        for (int i = 0; i < needed.length; i++) {
            double speed = motion.speed()[i];
            needed[i] = speed < LEAST_SPEED_MPS ? Double.NaN : sheet.wheelbaseM() * motion.yawRate()[i] / speed;
            limit[i] = grip.at(speed);
            station[i] = stint.station().get(i);
        }
        return SteeringScaleFit.of(
                only(judged, motion.steer()),
                only(judged, needed),
                only(judged, motion.lateral()),
                only(judged, motion.forward()),
                only(judged, limit),
                only(judged, motion.speed()),
                only(judged, station));
    }

    private static double angle(Motion motion, CarSheet sheet, int i) {
        double speed = motion.speed()[i];
        return speed < LEAST_SPEED_MPS
                ? Double.NaN
                : motion.steer()[i] - sheet.wheelbaseM() * motion.yawRate()[i] / speed;
    }

    /** On a straight the balance angle is zero but for noise. */
    private static double noise(Motion motion, CarSheet sheet) {
        double[] straight = new double[motion.speed().length];
        for (int i = 0; i < straight.length; i++) {
            boolean quiet = Math.abs(motion.lateral()[i]) < STRAIGHT_MPS2 && motion.speed()[i] > QUIET_SPEED_MPS;
            straight[i] = quiet ? angle(motion, sheet, i) : Double.NaN;
        }
        double scatter = Robust.scaledMad(Robust.finite(straight));
        return Double.isFinite(scatter) ? scatter : 0.0;
    }

    private static boolean[] judged(Stint stint) {
        boolean[] judged = new boolean[stint.recording().sampleCount()];
        for (Lap lap : stint.goodLaps()) {
            Arrays.fill(judged, lap.from(), lap.to(), true);
        }
        return judged;
    }

    private static double[] only(boolean[] keep, double[] values) {
        double[] out = new double[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (keep[i]) {
                out[count++] = values[i];
            }
        }
        return Arrays.copyOf(out, count);
    }
}
