package setwright.core.chassis;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;

/*
 * Design note. Braking compresses the front against the rear, whatever the suspension: the correlation of dive with deceleration tells
 * which way travel counts.
 */

/** Tells which way suspension travel counts. */
public final class TravelDirection {
    /** The four travels, in the order of {@link Wheel}. */
    public static final List<Quantity> TRAVEL =
            Arrays.stream(Wheel.values()).map(wheel -> wheel.of("SUSPENSION")).toList();

    /** Braking explains a good part of how the front stands against the rear, else the direction is not known. */
    private static final double LEAST_CORRELATION = 0.3;

    private static final int FEWEST = 50;

    private TravelDirection() {}

    /** Returns +1 when travel counts compression, -1 when it counts extension, 0 when that cannot be told. */
    public static double of(Stint stint, HandlingTrace trace) {
        return of(Motion.of(stint, trace));
    }

    static double of(Motion motion) {
        Channel[] travel = TRAVEL.stream().map(motion.recording()::channel).toArray(Channel[]::new);
        double[] dive = new double[motion.recording().sampleCount()];
        double[] slowing = new double[dive.length];
        int count = 0;
        for (Lap lap : motion.goodLaps()) {
            for (int i = lap.from(); i < lap.to(); i++) {
                double down = travel[0].get(i) + travel[1].get(i) - travel[2].get(i) - travel[3].get(i);
                if (Double.isFinite(down) && Double.isFinite(motion.forward().get(i))) {
                    dive[count] = down;
                    slowing[count++] = -motion.forward().get(i);
                }
            }
        }
        if (count < FEWEST) {
            return 0.0;
        }
        double correlation =
                new PearsonsCorrelation().correlation(Arrays.copyOf(dive, count), Arrays.copyOf(slowing, count));
        return Math.abs(correlation) > LEAST_CORRELATION ? Math.signum(correlation) : 0.0;
    }
}
