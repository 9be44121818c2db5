package setwright.core.judgement;

import java.util.List;
import setwright.core.judgement.Finding.Cause;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;

/** From which probability on something is told as found, 0..1. */
public final class Certainty {
    /** What is the car's: of thirteen balanced cars of the truth bench's tuning seed the surest level was 0.62. */
    public static final double CAR = 0.65;
    /**
     * The same against the car in good order, where the probability is as often right as it says: more probable than not. The next run is
     * spent either way, on one step tried back to back or on as many laps again.
     */
    private static final double CAR_AGAINST_BASELINE = 0.5;
    /**
     * The same where neither ranges on the sheet nor a baseline say anything: what a healthy car shows is known to half a degree only. Without
     * ranges, 20 of 60 balanced cars of the tuning seed show a level or slides with 0.65 or more (0.87 at most) and 9 of 28 faulty ones.
     */
    public static final double CAR_BY_LAPS_ONLY = 0.95;
    /** What the driver does, which costs him no part but his pride. */
    public static final double DRIVER = 0.8;
    /** One corner alone: a lap has many corners and phases to be unlucky in. */
    static final double ALONE = 0.95;
    /**
     * What one corner alone says of the car where there is no baseline: nothing. Of six tuning seeds of the truth bench 7 of 76 balanced cars
     * have one in which the rear lets go lap after lap, and nothing else, and 15 of 209 with a fault, whose balance it tells in 9.
     */
    static final double OF_THE_CAR_IN_ONE_CORNER = 0.5;
    /** From it on something is suspected, which more laps could settle. */
    static final double SUSPECTED = 0.5;

    private Certainty() {}

    /** Returns from which probability on something that was considered in a diagnosis is shown as a finding. */
    public static double least(Finding finding, Diagnosis diagnosis) {
        return least(finding, diagnosis.grounds().standing(), diagnosis.faults());
    }

    /**
     * Returns from which probability on something that was considered is shown as a finding.
     *
     * @param standing  what else than the laps was asked
     * @param faults    of the driving, what came since the baseline first: a habit that he always had upsets any car
     */
    static double least(Finding finding, SetupStanding standing, List<DrivingFault> faults) {
        if (!finding.lapWide()) {
            return ALONE;
        }
        if (finding.cause() == Cause.DRIVER) {
            return DRIVER;
        }
        if (standing.isUnknown()) {
            return CAR_BY_LAPS_ONLY;
        }
        boolean upset = DriverCause.habit(faults)
                .filter(habit -> !habit.sinceTheBaseline())
                .isPresent();
        return standing.yard() == Yard.BASELINE && !upset ? CAR_AGAINST_BASELINE : CAR;
    }
}
