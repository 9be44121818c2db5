package setwright.core.judgement;

import setwright.core.judgement.Finding.Cause;
import setwright.core.standing.SetupStanding;

/** From which probability on something is told as found, 0..1. */
public final class Certainty {
    /** What is the car's: of thirteen balanced cars of the truth bench's tuning seed the surest level was 0.62. */
    public static final double CAR = 0.65;
    /**
     * The same where neither ranges on the sheet nor a baseline say anything: what a healthy car shows is known to half a degree only. Without
     * ranges, 20 of 60 balanced cars of the tuning seed show a level or slides with 0.65 or more (0.87 at most) and 9 of 28 faulty ones.
     */
    public static final double CAR_BY_LAPS_ONLY = 0.95;
    /** What the driver does, which costs him no part but his pride. */
    public static final double DRIVER = 0.8;
    /** One corner alone: a lap has many corners and phases to be unlucky in. */
    static final double ALONE = 0.95;
    /** From it on something is suspected, which more laps could settle. */
    static final double SUSPECTED = 0.5;

    private Certainty() {}

    /**
     * Returns from which probability on something that was considered is shown as a finding.
     *
     * @param standing  what else than the laps was asked
     */
    public static double least(Finding finding, SetupStanding standing) {
        if (!finding.lapWide()) {
            return ALONE;
        }
        if (finding.cause() == Cause.DRIVER) {
            return DRIVER;
        }
        return standing.isUnknown() ? CAR_BY_LAPS_ONLY : CAR;
    }
}
