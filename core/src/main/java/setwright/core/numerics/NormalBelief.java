package setwright.core.numerics;

/**
 * What is believed of a quantity, and how it changes with data of known error: the normal conjugate rule (Gelman et al., Bayesian Data
 * Analysis, 3rd edition, section 2.5).
 *
 * @param mean       middle
 * @param deviation  standard deviation, ≥ 0; infinite where nothing is believed
 */
public record NormalBelief(double mean, double deviation) {
    public NormalBelief {
        if (!(deviation >= 0.0)) {
            throw new IllegalArgumentException("a standard deviation is not negative, got " + deviation);
        }
    }

    /** Returns that nothing is believed. */
    public static NormalBelief nothing() {
        return new NormalBelief(0.0, Double.POSITIVE_INFINITY);
    }

    /**
     * Returns the belief after a datum.
     *
     * @param value  measured
     * @param error  its standard deviation, &gt; 0
     */
    public NormalBelief given(double value, double error) {
        if (!(error > 0.0)) {
            throw new IllegalArgumentException("a measured value has an error above 0, got " + error);
        }
        if (deviation == 0.0) {
            return this;
        }
        double before = 1.0 / (deviation * deviation);
        double datum = 1.0 / (error * error);
        double precision = before + datum;
        return new NormalBelief((before * mean + datum * value) / precision, Math.sqrt(1.0 / precision));
    }
}
