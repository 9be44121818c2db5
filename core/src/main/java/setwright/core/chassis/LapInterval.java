package setwright.core.chassis;

import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.numerics.Robust;

/**
 * The mean of one value a lap, with the interval that holds the mean of endless such laps with 95 %.
 *
 * <p><b>Source:</b> Student's t, {@code mean +- t(n - 1) s / sqrt(n)}; laps count as independent of each other.
 *
 * @param mean  NaN without laps
 * @param low   lower end; minus infinity with fewer than two laps
 * @param high  upper end
 * @param laps  that had a value
 */
public record LapInterval(double mean, double low, double high, int laps) {
    private static final double UPPER = 0.975;

    /** Returns it for one value a lap; those that are not finite are left out. */
    public static LapInterval of(double[] perLap) {
        double[] values = Robust.finite(perLap);
        int n = values.length;
        double sum = 0.0;
        for (double value : values) {
            sum += value;
        }
        double mean = n == 0 ? Double.NaN : sum / n;
        if (n < 2) {
            return new LapInterval(mean, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, n);
        }
        double squares = 0.0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double half =
                new TDistribution(n - 1.0).inverseCumulativeProbability(UPPER) * Math.sqrt(squares / (n - 1.0) / n);
        return new LapInterval(mean, mean - half, mean + half, n);
    }

    /** Tells whether all of the interval lies above a value. */
    public boolean above(double value) {
        return low > value;
    }

    /** Tells whether all of the interval lies below a value. */
    public boolean below(double value) {
        return high < value;
    }

    /** Tells whether there is a mean. */
    public boolean isKnown() {
        return Double.isFinite(mean);
    }
}
