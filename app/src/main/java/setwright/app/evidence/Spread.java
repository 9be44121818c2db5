package setwright.app.evidence;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Where repeated values lie, robustly.
 *
 * @param median  middle value; NaN without values
 * @param low     lower end of the median's 95 % interval; NaN with fewer than three values
 * @param high    upper end
 * @param scatter robust standard deviation of one value: 1.4826 times the median absolute deviation
 * @param count   number of values
 */
public record Spread(double median, double low, double high, double scatter, int count) {
    /** Makes the median absolute deviation an estimate of a normal distribution's standard deviation: 1 / 0.6745. */
    private static final double MAD_TO_SIGMA = 1.4826;
    /** Standard error of a median over that of a mean, for a normal distribution: the square root of pi / 2. */
    private static final double MEDIAN_OVER_MEAN = Math.sqrt(Math.PI / 2.0);

    private static final int LEAST_FOR_INTERVAL = 3;

    /** Summarises values; those that are not finite are left out. */
    public static Spread of(double[] values) {
        double[] known = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        double median = middle(known);
        double[] deviations =
                Arrays.stream(known).map(v -> Math.abs(v - median)).sorted().toArray();
        double scatter = MAD_TO_SIGMA * middle(deviations);
        if (known.length < LEAST_FOR_INTERVAL) {
            return new Spread(median, Double.NaN, Double.NaN, scatter, known.length);
        }
        double t = new TDistribution(known.length - 1.0).inverseCumulativeProbability(0.975);
        double half = t * MEDIAN_OVER_MEAN * scatter / Math.sqrt(known.length);
        return new Spread(median, median - half, median + half, scatter, known.length);
    }

    /** Tells whether the interval is known and lies on one side of zero. */
    public boolean clearOfZero() {
        return low > 0.0 || high < 0.0;
    }

    /** Tells whether there is any value. */
    public boolean known() {
        return count > 0;
    }

    private static double middle(double[] sorted) {
        int n = sorted.length;
        if (n == 0) {
            return Double.NaN;
        }
        return n % 2 == 1 ? sorted[n / 2] : 0.5 * (sorted[n / 2 - 1] + sorted[n / 2]);
    }
}
