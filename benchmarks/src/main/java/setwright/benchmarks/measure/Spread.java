package setwright.benchmarks.measure;

import java.util.Arrays;

/**
 * Several figures in short.
 *
 * @param median  of them; NaN of none
 * @param least   of them
 * @param most    of them
 */
public record Spread(double median, double least, double most) {

    /** Returns that of figures; those that are not finite do not count. */
    public static Spread of(double... figures) {
        double[] sorted =
                Arrays.stream(figures).filter(Double::isFinite).sorted().toArray();
        if (sorted.length == 0) {
            return new Spread(Double.NaN, Double.NaN, Double.NaN);
        }
        int half = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[half] : 0.5 * (sorted[half - 1] + sorted[half]);
        return new Spread(median, sorted[0], sorted[sorted.length - 1]);
    }

    /** Tells whether there is anything. */
    public boolean known() {
        return Double.isFinite(median);
    }
}
