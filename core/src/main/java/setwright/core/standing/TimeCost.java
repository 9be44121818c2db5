package setwright.core.standing;

/**
 * What something costs a lap.
 *
 * @param meanS       expected, s; negative: it gains time
 * @param deviationS  standard deviation, s
 */
public record TimeCost(double meanS, double deviationS) {
    /** Nothing, for sure. */
    public static final TimeCost NONE = new TimeCost(0.0, 0.0);
}
