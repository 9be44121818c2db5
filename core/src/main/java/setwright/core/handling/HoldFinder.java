package setwright.core.handling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/*
 * Design note. A wheel that is not moved at all is none that is held: it has to be turned in before and moved again behind. Even
 * so most of what is found is how the corner is driven, trailing the brake with a quiet wheel, lap after lap, and says
 * nothing by itself (docs/slip.md, section 5). That it must not happen in every lap was left out: a rear that is loose on
 * every entry is waited for in every lap. The axles tell both apart.
 */

/** Finds a wheel that waits before the apex while the path goes on tightening. */
final class HoldFinder {
    /** The wheel is still when it moves slower than this share of this pass's fastest turning in. */
    private static final double STILL = 0.1;
    /** Faster than this share it is moved: twice as fast, so that a slow hand is neither. */
    private static final double MOVES = 0.2;
    /** Within this time before and behind; the filter of 4 Hz spreads a sudden movement over a tenth of a second. */
    private static final double BESIDE_S = 0.3;
    /** Half of the time over which a rate is taken: one step of a slow logger, so that fast ones do not count their noise. */
    private static final double RATE_S = 0.02;
    /** Share of the most lock that is on before it can be waited with. */
    private static final double TURNED_IN = 0.25;

    private static final double SHORTEST_S = 0.1;
    private static final double LONGEST_S = 0.6;

    private HoldFinder() {}

    static List<HandsEvent> find(
            PassWindow pass, PassMarks marks, Map<Phase, PhaseSplitter.Range> phases, double steeringRatio) {
        double most = pass.steer()[marks.highestSteer()];
        int apex = apex(pass, marks);
        double fastest = fastest(pass, marks.turnIn(), apex, 1.0);
        int beside = pass.samples(BESIDE_S);
        List<HandsEvent> events = new ArrayList<>();
        int from = marks.turnIn();
        for (int k = from; k <= apex; k++) {
            if (k < apex && Math.abs(rate(pass, k)) < STILL * fastest) {
                continue;
            }
            double seconds = (k - from) * pass.stepS();
            double tightens = (pass.curvature(k) - pass.curvature(from)) / Math.max(pass.curvature(apex), 1.0e-6);
            boolean turnedIn = fastest(pass, from - beside, from, 1.0) >= MOVES * fastest;
            boolean movesOn = fastest(pass, k, k + beside, 1.0) >= MOVES * fastest
                    || fastest(pass, k, k + beside, -1.0) >= MOVES * fastest;
            if (seconds >= SHORTEST_S
                    && seconds <= LONGEST_S
                    && tightens > HandsFinder.LEAST_SHARE
                    && pass.steer()[from] > TURNED_IN * most
                    && turnedIn
                    && movesOn) {
                double missing = tightens * most * steeringRatio;
                events.add(HandsFinder.event(pass, phases, HandsEvent.Kind.HOLD, from, k, missing));
            }
            from = k + 1;
        }
        return events;
    }

    /** Returns the rate of the wheel, rad/s at the road wheels. */
    private static double rate(PassWindow pass, int k) {
        int beside = pass.samples(RATE_S);
        int from = Math.max(0, k - beside);
        int to = Math.min(pass.size() - 1, k + beside);
        return (pass.steer()[to] - pass.steer()[from]) / ((to - from) * pass.stepS());
    }

    /** Returns the greatest rate in a direction, 1 into the corner or -1 out of it, rad/s; 0 when it never moves there. */
    private static double fastest(PassWindow pass, int from, int to, double direction) {
        double fastest = 0.0;
        for (int k = Math.max(from, 0); k < Math.min(to, pass.size()); k++) {
            fastest = Math.max(fastest, direction * rate(pass, k));
        }
        return fastest;
    }

    /** Where the path is tightest. */
    private static int apex(PassWindow pass, PassMarks marks) {
        int apex = marks.turnIn();
        for (int k = apex; k <= Math.min(marks.steerStraight(), pass.size() - 2); k++) {
            apex = pass.curvature(k) > pass.curvature(apex) ? k : apex;
        }
        return apex;
    }
}
