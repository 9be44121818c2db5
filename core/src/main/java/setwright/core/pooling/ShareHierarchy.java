package setwright.core.pooling;

import java.util.Collections;
import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.special.Gamma;

/*
 * Design note. Group j shows something y_j times of n_j; its true share is drawn from a beta distribution with mean m and weight k that all
 * groups have in common. Mean and weight are integrated over a grid, with a uniform prior on the mean and on 1/sqrt(k) (A. Gelman et
 * al., Bayesian Data Analysis, chapter 5.3, where the prior of the rat tumour example is flat in m and in k^(-1/2); value from memory).
 */

/** Partly pooled shares of groups. */
public final class ShareHierarchy {
    private static final int MEANS = 100;
    private static final int WEIGHTS = 60;
    /** Weights from one half to a thousand occasions: from hardly anything in common to all the same. */
    private static final double LEAST_WEIGHT = 0.5;

    private static final double MOST_WEIGHT = 1000.0;
    /** Less than this is not worth working out. */
    private static final double NEGLIGIBLE = 1.0e-9;

    private final List<Count> counts;
    private final List<Integer> groups;
    private final double[] alpha = new double[MEANS * WEIGHTS];
    private final double[] beta = new double[MEANS * WEIGHTS];
    private final double[] probability = new double[MEANS * WEIGHTS];

    /**
     * How often it was seen in one group.
     *
     * @param seen  0..{@code of}
     * @param of    occasions, &gt;= 0
     */
    public record Count(int seen, int of) {
        public Count {
            if (seen < 0 || seen > of) {
                throw new IllegalArgumentException("seen " + seen + " times of " + of);
            }
        }
    }

    private ShareHierarchy(List<Count> counts, List<Integer> groups) {
        this.counts = List.copyOf(counts);
        this.groups = List.copyOf(groups);
        double most = Double.NEGATIVE_INFINITY;
        double least = 1.0 / Math.sqrt(MOST_WEIGHT);
        double span = 1.0 / Math.sqrt(LEAST_WEIGHT) - least;
        for (int i = 0; i < MEANS; i++) {
            for (int k = 0; k < WEIGHTS; k++) {
                double mean = (i + 0.5) / MEANS;
                double root = least + span * (k + 0.5) / WEIGHTS;
                int at = i * WEIGHTS + k;
                alpha[at] = mean / (root * root);
                beta[at] = (1.0 - mean) / (root * root);
                probability[at] = logLikelihood(alpha[at], beta[at]);
                most = Math.max(most, probability[at]);
            }
        }
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            probability[at] = Math.exp(probability[at] - most);
            sum += probability[at];
        }
        for (int at = 0; at < probability.length; at++) {
            probability[at] /= sum;
        }
    }

    /** Pools groups. */
    public static ShareHierarchy of(List<Count> counts) {
        return new ShareHierarchy(counts, Collections.nCopies(counts.size(), 1));
    }

    /**
     * Pools many groups, of which many have the same count.
     *
     * @param counts  each of them once
     * @param groups  how many groups have it, &gt;= 1
     */
    public static ShareHierarchy of(List<Count> counts, List<Integer> groups) {
        if (counts.size() != groups.size()) {
            throw new IllegalArgumentException(counts.size() + " counts of " + groups.size() + " numbers of groups");
        }
        return new ShareHierarchy(counts, groups);
    }

    private double logLikelihood(double a, double b) {
        double log = 0.0;
        for (int j = 0; j < counts.size(); j++) {
            Count count = counts.get(j);
            log += groups.get(j) * (logBeta(a + count.seen(), b + count.of() - count.seen()) - logBeta(a, b));
        }
        return log;
    }

    private static double logBeta(double a, double b) {
        return Gamma.logGamma(a) + Gamma.logGamma(b) - Gamma.logGamma(a + b);
    }

    /** Returns the expected share of a group of which nothing was seen. */
    public double mean() {
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            sum += probability[at] * alpha[at] / (alpha[at] + beta[at]);
        }
        return sum;
    }

    /** Returns the expected share of a group, drawn toward the others'. */
    public double group(int j) {
        Count count = counts.get(j);
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            sum += probability[at] * (alpha[at] + count.seen()) / (alpha[at] + beta[at] + count.of());
        }
        return sum;
    }

    /** Returns the probability that a group shows it more often than groups do on average. */
    public double aboveMean(int j) {
        Count count = counts.get(j);
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            if (probability[at] >= NEGLIGIBLE) {
                sum += probability[at]
                        * (1.0
                                - new BetaDistribution(alpha[at] + count.seen(), beta[at] + count.of() - count.seen())
                                        .cumulativeProbability(alpha[at] / (alpha[at] + beta[at])));
            }
        }
        return sum;
    }

    /** Returns the probability that a group shows it on more than half of all occasions. */
    public double mostly(int j) {
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            sum += probability[at] * mostly(j, at);
        }
        return sum;
    }

    /** Returns the probability that every group does. */
    public double allMostly() {
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            double all = probability[at];
            for (int j = 0; j < counts.size(); j++) {
                all *= mostly(j, at);
            }
            sum += all;
        }
        return sum;
    }

    /** Returns the probability that this group does and no other. */
    public double onlyMostly(int j) {
        double sum = 0.0;
        for (int at = 0; at < probability.length; at++) {
            double only = probability[at] * mostly(j, at);
            for (int other = 0; other < counts.size(); other++) {
                only *= other == j ? 1.0 : 1.0 - mostly(other, at);
            }
            sum += only;
        }
        return sum;
    }

    private double mostly(int j, int at) {
        if (probability[at] < NEGLIGIBLE) {
            return 0.0;
        }
        Count count = counts.get(j);
        return 1.0
                - new BetaDistribution(alpha[at] + count.seen(), beta[at] + count.of() - count.seen())
                        .cumulativeProbability(0.5);
    }
}
