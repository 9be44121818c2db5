package setwright.core.simulation.truth;

import java.util.List;

/**
 * How steadily somebody really drove.
 *
 * @param deviationShare  standard deviation of the flying laps without a mistake over their mean; NaN with fewer than two
 * @param laps            how many of these there were
 */
public record TrueDriving(double deviationShare, int laps) {
    /** Steady enough to judge a setup: orientation of the trade is 0.2 to 0.5 % (common practice). */
    public static final double STEADY_BELOW = 0.008;

    /**
     * Reads it off the lap times.
     *
     * @param lapsS  the out lap first, s
     */
    public static TrueDriving of(List<Double> lapsS) {
        double[] times =
                FlyingLaps.clean(lapsS).stream().mapToDouble(lapsS::get).toArray();
        Moments moments = Moments.of(times);
        return new TrueDriving(moments.deviation() / moments.mean(), times.length);
    }

    public boolean consistent() {
        return deviationShare < STEADY_BELOW;
    }
}
