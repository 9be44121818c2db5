package setwright.core.proposal;

import java.util.Optional;
import setwright.core.judgement.Yardstick;
import setwright.core.proposal.Refusal.Figure;
import setwright.core.proposal.Refusal.Kind;

/*
 * Design note. A trial costs laps and the time of people. A change that neither moves the target by what is worth a change nor gains
 * anything that a clock shows is not worth one. Either is enough: a small move all round the lap may gain time, and a car may be
 * cured without being quicker. What gains less than runs with the same setup differ by may be right all the same, as replayed effects
 * are careful (two of four practice cases with a fault of the car get such a change, and it is among the best third by true lap time): it
 * is proposed, and said to be little.
 */

/** How little a change may do. */
final class Slightness {
    /** Less is not shown of a lap time. */
    static final double SHOWN_S = 0.005;

    private Slightness() {}

    /**
     * Returns why a change is not to be made; empty where it does something that shows.
     *
     * @param movedRad  by how much the target moves toward the cure, rad
     * @param gainedS   what a lap gains, s
     */
    static Optional<Refusal> refusal(double movedRad, double gainedS) {
        return movedRad >= Yardstick.LEAST_RAD || gainedS >= SHOWN_S
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Kind.TOO_LITTLE,
                        Refusal.text(
                                "it does too little: it gains nothing that shows, and less than %.2f deg in the target is not worth a change",
                                Math.toDegrees(Yardstick.LEAST_RAD)),
                        new Figure("target_least_deg", Math.toDegrees(Yardstick.LEAST_RAD))));
    }

    /**
     * Returns a warning not to expect much; empty where the change does what is worth one.
     *
     * @param movedRad  by how much the target moves toward the cure, rad
     * @param gainedS   what a lap gains, s
     * @param lapS      a usual lap, s
     */
    static Optional<String> warning(double movedRad, double gainedS, double lapS) {
        double runsS = Yardstick.RUN_TIME_SHARE * lapS;
        return movedRad >= Yardstick.LEAST_RAD || gainedS >= runsS
                ? Optional.empty()
                : Optional.of(Refusal.text(
                        "Do not expect much: a change is usually made for %.2f deg or more, and laps of two runs with the same setup"
                                + " differ by %.2f s.",
                        Math.toDegrees(Yardstick.LEAST_RAD), runsS));
    }
}
