package setwright.core.numerics;

import java.util.Arrays;

/**
 * The slope of a line through few points that some wild ones cannot spoil, with an interval that asks for no normal
 * distribution: median of the slopes between pairs, and the order statistics of these slopes that Kendall's test would not
 * refuse at the two-sided 5 % level.
 *
 * <p><b>Source:</b> P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379; the null distribution of Kendall's S is counted out, it is
 * that of inversions of permutations.
 *
 * @param slope   best estimate; NaN with fewer than two different {@code x}
 * @param low     lower end; minus infinity when the points are too few for any interval
 * @param high    upper end
 * @param points  number of points used
 */
public record SlopeInterval(double slope, double low, double high, int points) {
    private static final double LEVEL = 0.05;

    /** Fits a line to points; those that are not finite are left out. */
    public static SlopeInterval of(double[] x, double[] y) {
        int[] use = java.util.stream.IntStream.range(0, x.length)
                .filter(i -> Double.isFinite(x[i]) && Double.isFinite(y[i]))
                .toArray();
        int n = use.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double dx = x[use[i]] - x[use[j]];
                if (dx != 0.0) {
                    slopes[count++] = (y[use[i]] - y[use[j]]) / dx;
                }
            }
        }
        if (count == 0) {
            return new SlopeInterval(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, n);
        }
        double[] sorted = Arrays.copyOf(slopes, count);
        Arrays.sort(sorted);
        int outside = outside(n);
        // ties in x leave fewer slopes than pairs: the interval then reaches as far out as if they were missing on both
        // sides
        int index = outside - (n * (n - 1) / 2 - count);
        boolean known = index >= 0 && outside >= 0;
        return new SlopeInterval(
                Robust.median(sorted),
                known ? sorted[index] : Double.NEGATIVE_INFINITY,
                known ? sorted[count - 1 - index] : Double.POSITIVE_INFINITY,
                n);
    }

    /** Tells whether zero lies outside the interval. */
    public boolean clear() {
        return low > 0.0 || high < 0.0;
    }

    /**
     * Returns how many slopes lie outside the interval on each side: the most inversions that a random order of {@code n}
     * has with a probability below half the level; -1 when even none is too likely.
     */
    static int outside(int n) {
        int pairs = n * (n - 1) / 2;
        double[] share = new double[pairs + 1];
        share[0] = 1.0;
        for (int k = 2; k <= n; k++) {
            double[] next = new double[pairs + 1];
            for (int s = 0; s <= pairs; s++) {
                for (int j = 0; j < k && j <= s; j++) {
                    next[s] += share[s - j] / k;
                }
            }
            share = next;
        }
        double below = 0.0;
        int outside = -1;
        for (int s = 0; s <= pairs; s++) {
            below += share[s];
            if (below > 0.5 * LEVEL) {
                break;
            }
            outside = s;
        }
        return outside;
    }
}
