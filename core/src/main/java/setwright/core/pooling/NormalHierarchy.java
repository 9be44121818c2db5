package setwright.core.pooling;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/*
 * Design note. Groups j were measured as y_j with known standard errors s_j; their true means are normal about a common mean with a
 * spread tau between groups: y_j ~ N(theta_j, s_j), theta_j ~ N(mu, tau). With as few groups as a car has drivers, any one value of tau is
 * a guess: the method of moments says zero more often than not, and then every driver is taken for the same one. So tau is integrated
 * over a grid, with a half-normal prior of a given scale (A. Gelman, Prior distributions for variance parameters in hierarchical models,
 * Bayesian Analysis 1, 2006, advises such weak priors for few groups). Given tau all else is normal in closed form: A. Gelman et al.,
 * Bayesian Data Analysis, chapter 5.4, equations for mu, tau and theta_j (values from memory). A flat prior on mu.
 */

/** Partly pooled means of groups: what they have in common, how they differ, and each one's own. */
public final class NormalHierarchy {
    private static final int NODES = 400;
    /** Beyond so many scales of the prior nothing is left. */
    private static final double REACH = 5.0;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final double[] means;
    private final double[] errors;
    private final double[] tau;
    private final double[] weight;

    private NormalHierarchy(double[] means, double[] errors, double[] tau, double[] weight) {
        this.means = means.clone();
        this.errors = errors.clone();
        this.tau = tau;
        this.weight = weight;
    }

    /**
     * A mean.
     *
     * @param value      expected
     * @param deviation  standard deviation
     */
    public record Estimate(double value, double deviation) {}

    /**
     * Pools groups.
     *
     * @param means   of the groups, at least one
     * @param errors  their standard errors, &gt; 0
     * @param scale   of the half-normal prior of the spread between groups, in the unit of the means; infinite: uniform
     */
    public static NormalHierarchy of(double[] means, double[] errors, double scale) {
        if (means.length == 0
                || means.length != errors.length
                || Arrays.stream(errors).anyMatch(s -> !(s > 0.0))) {
            throw new IllegalArgumentException(
                    "groups need a mean and a standard error > 0 each, got " + means.length + " and " + errors.length);
        }
        double top = Double.isInfinite(scale)
                ? 5.0 * Math.max(range(means), Arrays.stream(errors).max().orElseThrow())
                : REACH * scale;
        double[] tau = new double[NODES];
        double[] weight = new double[NODES];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < NODES; i++) {
            tau[i] = top * (i + 0.5) / NODES;
            double prior = Double.isInfinite(scale) ? 0.0 : -0.5 * tau[i] * tau[i] / (scale * scale);
            weight[i] = prior + logLikelihood(means, errors, tau[i]);
            most = Math.max(most, weight[i]);
        }
        double sum = 0.0;
        for (int i = 0; i < NODES; i++) {
            weight[i] = Math.exp(weight[i] - most);
            sum += weight[i];
        }
        for (int i = 0; i < NODES; i++) {
            weight[i] /= sum;
        }
        return new NormalHierarchy(means, errors, tau, weight);
    }

    /** Returns the spread between groups by the method of moments (DerSimonian and Laird, 1986): 0 where chance explains it all. */
    public static double spreadByMoments(double[] means, double[] errors) {
        double sum = 0.0;
        double squares = 0.0;
        for (double error : errors) {
            double w = 1.0 / (error * error);
            sum += w;
            squares += w * w;
        }
        double mean = common(means, errors, 0.0).value();
        double q = 0.0;
        for (int j = 0; j < means.length; j++) {
            q += (means[j] - mean) * (means[j] - mean) / (errors[j] * errors[j]);
        }
        return Math.sqrt(Math.max(0.0, (q - (means.length - 1)) / (sum - squares / sum)));
    }

    /** Returns the mean of all groups for a known spread between them. */
    public static Estimate common(double[] means, double[] errors, double spread) {
        double sum = 0.0;
        double weighted = 0.0;
        for (int j = 0; j < means.length; j++) {
            double w = 1.0 / (errors[j] * errors[j] + spread * spread);
            sum += w;
            weighted += w * means[j];
        }
        return new Estimate(weighted / sum, Math.sqrt(1.0 / sum));
    }

    /** The likelihood of tau with mu integrated out. */
    private static double logLikelihood(double[] means, double[] errors, double spread) {
        Estimate mu = common(means, errors, spread);
        double log = Math.log(mu.deviation());
        for (int j = 0; j < means.length; j++) {
            double variance = errors[j] * errors[j] + spread * spread;
            double off = means[j] - mu.value();
            log -= 0.5 * Math.log(variance) + 0.5 * off * off / variance;
        }
        return log;
    }

    /** Returns the mean of all groups. */
    public Estimate common() {
        return mixed(i -> common(means, errors, tau[i]));
    }

    /** Returns the expected spread between groups. */
    public double spread() {
        double sum = 0.0;
        for (int i = 0; i < NODES; i++) {
            sum += weight[i] * tau[i];
        }
        return sum;
    }

    /** Returns a group's own mean, drawn toward the others'. */
    public Estimate group(int j) {
        return mixed(i -> group(j, tau[i]));
    }

    private Estimate group(int j, double spread) {
        Estimate mu = common(means, errors, spread);
        double s2 = errors[j] * errors[j];
        double pull = s2 / (s2 + spread * spread);
        double own = (1.0 - pull) * s2;
        return new Estimate(
                pull * mu.value() + (1.0 - pull) * means[j],
                Math.sqrt(own + pull * pull * mu.deviation() * mu.deviation()));
    }

    /**
     * Returns how far a group lies from the mean of the others, which share nothing with it but the spread.
     *
     * @return empty difference (0, infinite) when there is no other group
     */
    public Estimate apart(int j) {
        if (means.length < 2) {
            return new Estimate(0.0, Double.POSITIVE_INFINITY);
        }
        double[] restMeans = without(means, j);
        double[] restErrors = without(errors, j);
        return mixed(i -> {
            // the group and the mean of the others' own means, both with what the spread lets them borrow
            double others = 0.0;
            double variance = 0.0;
            double n = restMeans.length;
            Estimate mu = common(means, errors, tau[i]);
            double pullSum = 0.0;
            for (int k = 0; k < restMeans.length; k++) {
                double s2 = restErrors[k] * restErrors[k];
                double pull = s2 / (s2 + tau[i] * tau[i]);
                others += (pull * mu.value() + (1.0 - pull) * restMeans[k]) / n;
                variance += (1.0 - pull) * s2 / (n * n);
                pullSum += pull / n;
            }
            double s2 = errors[j] * errors[j];
            double pull = s2 / (s2 + tau[i] * tau[i]);
            double own = pull * mu.value() + (1.0 - pull) * means[j];
            double shared = (pull - pullSum) * mu.deviation();
            return new Estimate(own - others, Math.sqrt((1.0 - pull) * s2 + variance + shared * shared));
        });
    }

    /** Returns the probability that an estimate is above some value. */
    public static double above(Estimate estimate, double value) {
        return NORMAL.cumulativeProbability((estimate.value() - value) / estimate.deviation());
    }

    @FunctionalInterface
    private interface AtSpread {
        Estimate at(int node);
    }

    /** Mean and spread of the mixture over the grid. */
    private Estimate mixed(AtSpread estimates) {
        double mean = 0.0;
        double square = 0.0;
        for (int i = 0; i < NODES; i++) {
            Estimate at = estimates.at(i);
            mean += weight[i] * at.value();
            square += weight[i] * (at.value() * at.value() + at.deviation() * at.deviation());
        }
        return new Estimate(mean, Math.sqrt(Math.max(square - mean * mean, 0.0)));
    }

    private static double range(double[] values) {
        return Arrays.stream(values).max().orElseThrow()
                - Arrays.stream(values).min().orElseThrow();
    }

    private static double[] without(double[] values, int j) {
        double[] rest = new double[values.length - 1];
        for (int k = 0; k < rest.length; k++) {
            rest[k] = values[k < j ? k : k + 1];
        }
        return rest;
    }
}
