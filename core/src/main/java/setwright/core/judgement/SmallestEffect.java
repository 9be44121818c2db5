package setwright.core.judgement;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * The smallest difference that can be told from chance with 80 % power at the two-sided 5 % level, when two groups of the
 * same size and scatter are compared.
 *
 * <p>{@code d = (t(0.975) + t(0.80)) sqrt(2 / n)} standard deviations with {@code 2 n - 2} degrees of freedom; within 2 %
 * of the exact non-central t for n of 3 and more (compared with a published power table, MRC CBU).
 */
public final class SmallestEffect {
    private SmallestEffect() {}

    /**
     * Returns the smallest difference in standard deviations.
     *
     * @param perGroup  observations in each group, at least 2
     * @return infinite with fewer than two
     */
    public static double inDeviations(int perGroup) {
        if (perGroup < 2) {
            return Double.POSITIVE_INFINITY;
        }
        TDistribution t = new TDistribution(2.0 * perGroup - 2.0);
        return (t.inverseCumulativeProbability(0.975) + t.inverseCumulativeProbability(0.80))
                * Math.sqrt(2.0 / perGroup);
    }
}
