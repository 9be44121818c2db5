package setwright.core.technique;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.pooling.NormalHierarchy;

/*
 * Design note. Corners differ in how a lever acts, so the slopes are pooled with a spread between corners: by the method of moments
 * (R. DerSimonian and N. Laird, Controlled Clinical Trials 7, 1986, 177). The interval is that of G. Knapp and J. Hartung (Statistics
 * in Medicine 22, 2003, 2693): a t distribution with one degree less than corners, its variance scaled by what the corners really
 * scatter, and never made smaller by it. A corner's own slope is drawn toward the common one by how badly it is known (empirical
 * Bayes). One or two corners say nothing of a spread: they are taken together as one, with the degrees of freedom of their passes.
 */

/**
 * Slopes of several corners, partly pooled.
 *
 * @param slope    common to all
 * @param error    its standard error
 * @param freedom  degrees of freedom of its t distribution
 * @param spread   standard deviation between corners
 * @param corners  each with its own slope, drawn toward the common one
 */
public record PooledSlope(double slope, double error, double freedom, double spread, List<AtCorner> corners) {
    /** Fewer say nothing of how corners differ. */
    private static final int FEWEST_FOR_SPREAD = 3;

    private static final double TWO_SIDED = 0.05;

    /**
     * A corner's slope.
     *
     * @param own    as its passes have it
     * @param slope  drawn toward the others
     * @param error  standard error of that
     */
    public record AtCorner(CornerSlope own, double slope, double error) {}

    public PooledSlope {
        corners = List.copyOf(corners);
    }

    /** Pools at least one. */
    public static PooledSlope of(List<CornerSlope> corners) {
        double[] slopes = corners.stream().mapToDouble(CornerSlope::slope).toArray();
        double[] errors = corners.stream().mapToDouble(CornerSlope::error).toArray();
        boolean many = corners.size() >= FEWEST_FOR_SPREAD;
        double spread = many ? NormalHierarchy.spreadByMoments(slopes, errors) : 0.0;
        NormalHierarchy.Estimate common = NormalHierarchy.common(slopes, errors, spread);
        double q = 0.0;
        for (int i = 0; i < slopes.length; i++) {
            double off = slopes[i] - common.value();
            q += off * off / (errors[i] * errors[i] + spread * spread);
        }
        double scatter = slopes.length > 1 ? Math.max(1.0, q / (slopes.length - 1)) : 1.0;
        double freedom = many
                ? slopes.length - 1.0
                : corners.stream().mapToInt(CornerSlope::freedom).sum();
        return new PooledSlope(
                common.value(),
                common.deviation() * Math.sqrt(scatter),
                freedom,
                spread,
                corners.stream().map(own -> drawn(own, common, spread)).toList());
    }

    private static AtCorner drawn(CornerSlope own, NormalHierarchy.Estimate common, double spread) {
        double variance = own.error() * own.error();
        double pull = variance / (variance + spread * spread);
        return new AtCorner(
                own,
                pull * common.value() + (1.0 - pull) * own.slope(),
                Math.sqrt((1.0 - pull) * variance + pull * pull * common.deviation() * common.deviation()));
    }

    /** Returns the lower end of the 95 % interval. */
    public double low() {
        return slope - quantile() * error;
    }

    /** Returns the upper end. */
    public double high() {
        return slope + quantile() * error;
    }

    private double quantile() {
        return new TDistribution(freedom).inverseCumulativeProbability(1.0 - 0.5 * TWO_SIDED);
    }

    /** Returns the probability that a slope is of the sign found, from a flat prior. */
    double sure() {
        return new TDistribution(freedom).cumulativeProbability(Math.abs(slope) / error);
    }

    /** Returns the p-value that there is no slope of an admissible sign: one-sided where only one is. */
    double pValue(Direction direction) {
        double beyond = 1.0 - sure();
        return switch (direction) {
            case EITHER -> 2.0 * beyond;
            case MORE, LESS -> direction.admits(slope) ? beyond : 1.0 - beyond;
            case NONE -> 1.0;
        };
    }

    /** Returns the share of the lever's variance over the laps that is not reading error, 0..1. */
    double reliability(Lever lever) {
        double variance = Arrays.stream(
                        corners.stream().mapToDouble(at -> at.own().spread()).toArray())
                .map(s -> s * s)
                .average()
                .orElse(0.0);
        double noise = lever.resolution() * lever.resolution();
        return variance > noise ? 1.0 - noise / variance : 0.0;
    }
}
