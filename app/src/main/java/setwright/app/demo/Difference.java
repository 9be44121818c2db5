package setwright.app.demo;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A difference of means with its 95 % interval.
 *
 * @param value  of the second less the first
 * @param low    lower end
 * @param high   upper end
 */
public record Difference(double value, double low, double high) {
    private static final double LEVEL = 0.975;

    /**
     * Returns the difference between groups of laps, their scatter taken as one: {@code sum of weight times mean}, standard error
     * from the pooled variance, Student's t. Laps of one run are no replicates of a setup: what changes from run to run is not in
     * the interval.
     *
     * @param groups   at least two laps in one of them
     * @param weights  one for each group, adding up to 0
     */
    static Difference of(List<List<Double>> groups, double... weights) {
        double value = 0.0;
        double squares = 0.0;
        double perVariance = 0.0;
        int free = 0;
        for (int g = 0; g < groups.size(); g++) {
            List<Double> group = groups.get(g);
            double mean = mean(group);
            value += weights[g] * mean;
            squares += group.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
            perVariance += weights[g] * weights[g] / group.size();
            free += group.size() - 1;
        }
        if (free < 1) {
            return new Difference(value, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double half =
                new TDistribution(free).inverseCumulativeProbability(LEVEL) * Math.sqrt(squares / free * perVariance);
        return new Difference(value, value - half, value + half);
    }

    static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    /** Returns this difference in another unit or the other way round. */
    public Difference times(double factor) {
        return factor >= 0.0
                ? new Difference(factor * value, factor * low, factor * high)
                : new Difference(factor * value, factor * high, factor * low);
    }
}
