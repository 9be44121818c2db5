package setwright.core.circuit;

import java.util.Locale;

/**
 * How far a reference line can be trusted.
 *
 * @param lengthM       of the line, m
 * @param laps          how many laps it is the middle of
 * @param fromPosition  whether it comes from position; otherwise from rate of turn and speed
 * @param closingGapM   how far the ends of a lap lay apart before the loop was closed, m; from position, the spread of the
 *                      laps across the line
 * @param demandNoise   standard deviation of lateral acceleration computed from the line's curvature at the driven speed,
 *                      m/s2
 */
public record LineQuality(double lengthM, int laps, boolean fromPosition, double closingGapM, double demandNoise) {
    /** Above this share of the length the shape is doubtful; below it is good (our proposal; no published bound known). */
    public static final double GOOD_CLOSING_SHARE = 0.005;

    /** Returns the closing gap as a share of the length. */
    public double closingShare() {
        return closingGapM / lengthM;
    }

    /** Tells whether the line's shape can be trusted. */
    public boolean good() {
        return fromPosition || closingShare() < GOOD_CLOSING_SHARE;
    }

    /** Returns one plain sentence. */
    public String sentence() {
        return fromPosition
                ? String.format(
                        Locale.ROOT,
                        "The reference line is the middle of %d laps, %.0f m long; the laps keep within %.1f m of it half"
                                + " of the time.",
                        laps,
                        lengthM,
                        closingGapM)
                : String.format(
                        Locale.ROOT,
                        "There is no position: the reference line comes from rate of turn and speed of %d laps, %.0f m"
                                + " long; its ends missed each other by %.0f m (%.1f %% of the length%s).",
                        laps,
                        lengthM,
                        closingGapM,
                        100.0 * closingShare(),
                        good() ? "" : ", so the map is only a sketch; stations and corners do not depend on it");
    }
}
