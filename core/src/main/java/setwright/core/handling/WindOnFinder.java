package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/*
 * Design note. The shape alone proves nothing: lock that comes back after a slide, or grows because the brake comes off, does the
 * same (docs/slip.md, section 5). Whether the front was at its limit is for who knows the axles to say.
 *
 * Dropped: spans of a quarter of a second, drawn out as long as the lock grew, and slack of 2 % for a path that tightens a little
 * (one tuning seed: 689 and 658 found instead of 533, and one of 68 true ones lost).
 */

/** Finds lock that grows, without a moment's tightening of the path, to more than the path and the car's balance ask for. */
final class WindOnFinder {
    /** The car still corners with this share of its own most. */
    private static final double CORNERING = 0.6;
    /** Standard deviations of the noise of the balance; one sample in a thousand by chance, when normal. */
    private static final double SURE = 3.0;

    private static final double ROUND_OFF = 1.0 + 1.0e-9;

    private WindOnFinder() {}

    static List<HandsEvent> find(
            PassWindow pass,
            PassMarks marks,
            Map<Phase, PhaseSplitter.Range> phases,
            double steeringRatio,
            double balanceNoiseRad) {
        double least = HandsFinder.LEAST_SHARE * pass.steer()[marks.highestSteer()];
        double cornering = CORNERING * HandsFinder.strongest(pass, marks);
        int last = Math.min(marks.steerStraight(), pass.size() - 1);
        List<HandsEvent> events = new ArrayList<>();
        int from = marks.turnIn();
        for (int k = from + 1; k <= last + 1; k++) {
            boolean winds = k <= last
                    && pass.steer()[k] > pass.steer()[k - 1]
                    && pass.curvature(k) <= ROUND_OFF * pass.curvature(from)
                    && pass.inward()[k] > cornering;
            if (winds) {
                continue;
            }
            int to = k - 1;
            double more = pass.steer()[to] - pass.steer()[from];
            double beyond = pass.balance()[to] - pass.reference()[to];
            if (more >= least && beyond > SURE * balanceNoiseRad) {
                events.add(HandsFinder.event(pass, phases, HandsEvent.Kind.WIND_ON, from, to, more * steeringRatio));
            }
            from = k;
        }
        return events;
    }
}
