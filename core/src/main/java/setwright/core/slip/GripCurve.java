package setwright.core.slip;

import java.util.List;

/**
 * What an axle gave in a stint: lateral force over vertical load against slip angle. Forces are what the motion needed, {@code (m b ay
 * + Iz r') / L} at the front and {@code (m a ay - Iz r') / L} at the rear, with what driving or braking takes put back by the
 * friction ellipse; intervals are of 95 %.
 *
 * @param axle          which
 * @param grip          force over load at the peak of the fitted curve; not a number with fewer than three laps at four fifths of it
 * @param gripLow       lower end of its interval
 * @param gripHigh      upper end
 * @param loadDoubt     standard error of the load over the load, for what is not known of the downforce: all forces may be off together by
 *                      as much, which their intervals do not hold; not a number without cornering
 * @param peakSlipRad   slip angle at the peak, rad
 * @param peakSlipLowRad   lower end of its interval, rad
 * @param peakSlipHighRad  upper end, rad
 * @param mostSlipShare slip over that of the peak that one moment in fifty of the cornering exceeds; a curve is known up to there
 * @param limitShare    share of the cornering time in which the axle gave more than 0.95 of its peak force, 0..1
 * @param points        medians of laps by slip angle, ascending
 */
public record GripCurve(
        AxleSide axle,
        double grip,
        double gripLow,
        double gripHigh,
        double loadDoubt,
        double peakSlipRad,
        double peakSlipLowRad,
        double peakSlipHighRad,
        double mostSlipShare,
        double limitShare,
        List<Point> points) {
    public GripCurve {
        points = List.copyOf(points);
    }

    /** Tells whether the laps say how much grip the axle has. */
    public boolean isKnown() {
        return Double.isFinite(grip);
    }

    /**
     * Force at a slip angle.
     *
     * @param slipRad  middle of the bin, rad
     * @param force    over load, mean of the laps' medians
     * @param low      lower end of its interval
     * @param high     upper end
     * @param laps     that were there
     */
    public record Point(double slipRad, double force, double low, double high, int laps) {}
}
