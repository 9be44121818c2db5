package setwright.core.chassis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Lap;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.slip.AxleEvidence;

/*
 * Design note. Torque over lateral acceleration is trail over mass, up to a constant: with the slip it falls as the pneumatic trail does,
 * down to what the mechanical trail of the caster leaves (H. B. Pacejka, Tire and Vehicle Dynamics, on the aligning torque; W. F.
 * Milliken and D. L. Milliken, Race Car Vehicle Dynamics, 1995, chapter 2; values from memory). Ratios of sums over each lap. It
 * corroborates what the slip says of the front axle and decides nothing: power steering and kerbs act on the same torque.
 */

/** Reads how the steering torque falls as the front axle comes to its peak. */
final class SteeringTorqueReader {
    private static final double[] USES = {0.2, 0.4, 0.6, 0.8, 1.0, 1.4};
    /** Below it the column's friction and the angle of the axis count for more than the trail. */
    private static final double SLOWEST_MPS = 15.0;

    private static final double LEAST_LATERAL_MPS2 = 3.0;
    private static final double LEAST_S = 0.5;
    /** Light use, against which the others are held. */
    private static final int LIGHT = 0;

    private static final double NEAR_PEAK = 0.8;

    private final Motion motion;
    private final List<Lap> laps;
    private final Channel torque;
    private final Channel use;

    private SteeringTorqueReader(Motion motion, Channel use) {
        this.motion = motion;
        this.laps = motion.goodLaps();
        this.torque = motion.recording().channel(Quantity.STEERING_TORQUE);
        this.use = use;
    }

    static void read(Motion motion, Optional<AxleEvidence> axles, ChassisEvidence.Builder into) {
        if (!motion.recording().has(Quantity.STEERING_TORQUE)) {
            into.missing(Subject.STEERING_TORQUE, false, "no steering torque was recorded");
        } else if (axles.isEmpty()) {
            into.missing(Subject.STEERING_TORQUE, true, "the slip of the front axle was not looked at");
        } else {
            read(motion, axles.get().trace().frontUse(), into);
        }
    }

    static void read(Motion motion, Channel frontUse, ChassisEvidence.Builder into) {
        SteeringTorque found = new SteeringTorqueReader(motion, frontUse).all();
        if (found.kept().laps() < 2) {
            into.missing(
                    Subject.STEERING_TORQUE,
                    true,
                    "fewer than two laps have the front axle both at light use and near its peak");
            return;
        }
        into.steeringTorque = Optional.of(found);
    }

    private SteeringTorque all() {
        List<SteeringTorque.Point> points = new ArrayList<>();
        for (int bin = 0; bin + 1 < USES.length; bin++) {
            double low = USES[bin];
            double high = USES[bin + 1];
            LapInterval ratio = over(low, high);
            if (ratio.laps() > 1) {
                points.add(new SteeringTorque.Point(low, high, ratio));
            }
        }
        return new SteeringTorque(
                points,
                over(NEAR_PEAK, USES[USES.length - 1]),
                laps.stream().map(Lap::number).toList());
    }

    private LapInterval over(double low, double high) {
        return motion.overLaps(
                lap -> perForce(laps.get(lap), low, high) / perForce(laps.get(lap), USES[LIGHT], USES[LIGHT + 1]));
    }

    /** Torque over lateral acceleration, both with the sign of the turn, where the front is used so much; Nm s²/m. */
    private double perForce(Lap lap, double low, double high) {
        double torques = 0.0;
        double forces = 0.0;
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            double across = motion.lateral().get(i);
            boolean counts = use.get(i) >= low
                    && use.get(i) < high
                    && motion.speed().get(i) > SLOWEST_MPS
                    && Math.abs(across) > LEAST_LATERAL_MPS2
                    && Double.isFinite(torque.get(i));
            if (counts) {
                torques += torque.get(i) * Math.signum(across);
                forces += Math.abs(across);
                count++;
            }
        }
        return count * motion.recording().stepS() < LEAST_S ? Double.NaN : torques / forces;
    }
}
