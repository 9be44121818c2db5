package setwright.core.judgement;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How uncertain a standard deviation from few values is: the 95 % interval of normal values,
 * {@code s sqrt((n - 1) / chi2)}.
 */
public final class ScatterInterval {
    private ScatterInterval() {}

    /** Returns the lower end of the interval over the estimate; 0 with fewer than two values. */
    public static double lowerFactor(int count) {
        return count < 2 ? 0.0 : factor(count, 0.975);
    }

    /** Returns the upper end over the estimate; infinite with fewer than two values. */
    public static double upperFactor(int count) {
        return count < 2 ? Double.POSITIVE_INFINITY : factor(count, 0.025);
    }

    private static double factor(int count, double probability) {
        double chiSquared = new ChiSquaredDistribution(count - 1.0).inverseCumulativeProbability(probability);
        return Math.sqrt((count - 1.0) / chiSquared);
    }
}
