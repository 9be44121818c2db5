package setwright.core.handling;

/**
 * One change to the next higher gear at full throttle.
 *
 * @param lap            lap number
 * @param stationM       where, m along the reference line
 * @param from           gear before it
 * @param speedMps       speed, m/s
 * @param engineRadPerS  engine speed just before, rad/s; NaN when not recorded
 * @param pullMps2       longitudinal acceleration just before, m/s²
 * @param nextPullMps2   the same just after, in the higher gear, m/s²
 */
public record Upshift(
        int lap,
        double stationM,
        int from,
        double speedMps,
        double engineRadPerS,
        double pullMps2,
        double nextPullMps2) {}
