package setwright.core.judgement;

import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;

/*
 * Design note. A slide that happens once is an accident; one that happens in most laps of a corner belongs to that
 * corner; one that belongs to several corners is a property of the car (or the driver). Each corner has its own share of
 * laps; the shares have a common prior whose mean is the pooled share of all corners and whose weight is that of two
 * laps, so that a corner seen twice cannot outshout one seen twelve times. The Poisson-binomial sum over corners then
 * gives the probability that at least two corners really have it.
 */

/** In how many corners something happens in most laps. */
final class Shares {
    /** Weight of the common prior, in laps. */
    private static final double PRIOR_LAPS = 2.0;

    private Shares() {}

    /** How often something was seen at one corner. */
    record Count(int corner, int seen, int passes) {}

    /** Probability that at this corner it happens in more than half of all laps. */
    static double mostly(Count count, double pooledShare) {
        double seen = count.seen() + PRIOR_LAPS * pooledShare;
        double not = count.passes() - count.seen() + PRIOR_LAPS * (1.0 - pooledShare);
        return 1.0 - new BetaDistribution(seen, not).cumulativeProbability(0.5);
    }

    /** Share over all corners, kept off 0 and 1 by half a lap. */
    static double pooled(List<Count> counts) {
        int seen = counts.stream().mapToInt(Count::seen).sum();
        int passes = counts.stream().mapToInt(Count::passes).sum();
        return (seen + 0.5) / (passes + 1.0);
    }

    /** Probability that it happens mostly in at least two corners. */
    static double atLeastTwo(double[] each) {
        double none = 1.0;
        double one = 0.0;
        for (double p : each) {
            one = one * (1.0 - p) + none * p;
            none *= 1.0 - p;
        }
        return 1.0 - none - one;
    }
}
