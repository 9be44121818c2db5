package setwright.core.chassis;

import java.util.List;

/**
 * Ride heights of both axles. Heights above the road at the axles between the wheels; rake is rear less front.
 *
 * @param fromTravel    true: the sheet's heights at rest less the suspension travel; false: measured
 * @param points        by speed, ascending, of quiet driving
 * @param frontFallM    how far the front comes down from standing to 50 m/s: the slope over v², m; not a number where speeds hardly
 *                      differ
 * @param rearFallM     the same of the rear
 * @param rakeGainM     rake at 50 m/s less at rest by the same slopes
 * @param frontLeastM   least height of a lap (one sample in a thousand is lower), m
 * @param rearLeastM    the same of the rear
 * @param laps          judged
 */
public record RideHeights(
        boolean fromTravel,
        List<Point> points,
        LapInterval frontFallM,
        LapInterval rearFallM,
        LapInterval rakeGainM,
        LapInterval frontLeastM,
        LapInterval rearLeastM,
        List<Integer> laps) {
    public RideHeights {
        points = List.copyOf(points);
        laps = List.copyOf(laps);
    }

    /**
     * Heights at a speed: means over the laps of each lap's median.
     *
     * @param lowMps   slowest of the class, m/s
     * @param highMps  quickest
     * @param speedMps median of what was driven in it, m/s
     * @param frontM   m
     * @param rearM    m
     * @param rakeM    rear less front, m
     */
    public record Point(
            double lowMps, double highMps, double speedMps, LapInterval frontM, LapInterval rearM, LapInterval rakeM) {}
}
