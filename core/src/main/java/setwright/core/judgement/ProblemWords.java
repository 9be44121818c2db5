package setwright.core.judgement;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Which words are right for a problem, by how much of the largest difference each place shows: shares of it, negative where it goes the
 * other way. The same for what is found and for what is true.
 */
public final class ProblemWords {
    /** Other speeds are right too when the difference there has this share of the largest (our choice). */
    private static final double ABOUT_AS_LARGE = 0.7;
    /** With this share of the opposite sign at one end of the speeds, "all corners" is no true word (our choice). */
    private static final double OPPOSITE = 0.3;
    /**
     * Other phases are, with this share: what a fault does in one phase of a corner the driver carries on into the next, so that
     * phases are told apart less well than speeds (our choice).
     */
    private static final double SHARED_PHASE = 0.5;

    private ProblemWords() {}

    /**
     * Returns at which speeds it may be said to be. Both ends show it: all corners. One end only: that end, and all corners unless the
     * other end goes the other way.
     *
     * @param largest  where the largest difference is
     * @param share    of each range in the phase of the largest; zero where there is no such corner
     */
    public static Set<SpeedRange> speeds(SpeedRange largest, ToDoubleFunction<SpeedRange> share) {
        double low = share.applyAsDouble(SpeedRange.LOW);
        double high = share.applyAsDouble(SpeedRange.HIGH);
        if (low >= ABOUT_AS_LARGE && high >= ABOUT_AS_LARGE) {
            return EnumSet.of(SpeedRange.ALL);
        }
        Set<SpeedRange> speeds = EnumSet.noneOf(SpeedRange.class);
        if (low >= ABOUT_AS_LARGE) {
            speeds.add(SpeedRange.LOW);
        }
        if (high >= ABOUT_AS_LARGE) {
            speeds.add(SpeedRange.HIGH);
        }
        if (share.applyAsDouble(SpeedRange.ALL) >= ABOUT_AS_LARGE && Math.min(low, high) >= -OPPOSITE) {
            speeds.add(SpeedRange.ALL);
        }
        if (speeds.isEmpty()) {
            speeds.add(largest);
        }
        return speeds;
    }

    /** Tells whether a phase with such a share at the right speeds is a right word as well. */
    public static boolean sharesPhase(double share) {
        return share >= SHARED_PHASE;
    }
}
