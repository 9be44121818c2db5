package setwright.core.numerics;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** A fitted {@link MixedModel}. */
public final class MixedFit {
    private final RealVector coefficients;
    private final RealMatrix covariance;
    private final double betweenVariance;
    private final double withinVariance;
    private final double criterion;
    private final MixedModel.Sums sums;
    private final RealMatrix information;

    MixedFit(
            RealVector coefficients,
            RealMatrix covariance,
            double betweenVariance,
            double withinVariance,
            double criterion,
            MixedModel.Sums sums,
            RealMatrix information) {
        this.coefficients = coefficients;
        this.covariance = covariance;
        this.betweenVariance = betweenVariance;
        this.withinVariance = withinVariance;
        this.criterion = criterion;
        this.sums = sums;
        this.information = information;
    }

    /**
     * A sum of coefficients as it was estimated.
     *
     * @param value    estimate
     * @param error    standard error
     * @param freedom  degrees of freedom of the error
     */
    public record Contrast(double value, double error, double freedom) {
        /** Returns how far the interval of a level reaches either way. */
        public double reach(double level) {
            return error * new TDistribution(freedom).inverseCumulativeProbability(0.5 + 0.5 * level);
        }

        /** Returns the two-sided probability of such a value, or one farther out, by chance. */
        public double byChance() {
            return 2.0 * new TDistribution(freedom).cumulativeProbability(-Math.abs(value) / error);
        }
    }

    /** Returns a sum of coefficients with these weights. */
    public Contrast contrast(double... weights) {
        RealVector wanted = new ArrayRealVector(weights);
        double variance = wanted.dotProduct(covariance.operate(wanted));
        double[] slopes = sums.slopes(wanted);
        double spread;
        if (betweenVariance > 0.0) {
            RealVector slope = new ArrayRealVector(slopes);
            spread = slope.dotProduct(MatrixUtils.inverse(information).operate(slope));
        } else {
            spread = slopes[1] * slopes[1] / information.getEntry(1, 1);
        }
        return new Contrast(wanted.dotProduct(coefficients), Math.sqrt(variance), 2.0 * variance * variance / spread);
    }

    /** Returns the standard deviation between groups. */
    public double betweenDeviation() {
        return Math.sqrt(betweenVariance);
    }

    /** Returns the standard deviation within groups. */
    public double withinDeviation() {
        return Math.sqrt(withinVariance);
    }

    /** Returns minus twice the restricted log likelihood at its best; with prior knowledge, that besides. */
    public double criterion() {
        return criterion;
    }
}
