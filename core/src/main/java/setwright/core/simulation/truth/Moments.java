package setwright.core.simulation.truth;

import java.util.Arrays;

/**
 * Mean and scatter of a few values.
 *
 * @param mean       NaN without a value
 * @param deviation  with one degree of freedom less than values; NaN with fewer than two
 * @param count      how many
 */
record Moments(double mean, double deviation, int count) {
    static Moments of(double[] values) {
        double mean = Arrays.stream(values).average().orElse(Double.NaN);
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        int n = values.length;
        return new Moments(mean, n < 2 ? Double.NaN : Math.sqrt(squares / (n - 1)), n);
    }

    /** Returns the standard error of the mean. */
    double error() {
        return deviation / Math.sqrt(count);
    }
}
