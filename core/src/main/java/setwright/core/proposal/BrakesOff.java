package setwright.core.proposal;

import java.util.Optional;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Refusal.Kind;
import setwright.core.standing.SetupStanding;

/*
 * Design note. The replay may promise time by moving the brake balance, whatever the problem: where it is best hangs on the grip of both axles to a
 * per cent, and laps on which nothing locks do not tell. Of 17 such changes on two seeds of the truth bench, for problems in the middle and on the
 * way out, four cost a thousandth of the lap or more at the limit, and only the two that took back a fault gained a tenth of a second there.
 */

/** Keeps the brake balance from being moved for a problem that lies where the brakes are off. */
final class BrakesOff {
    private BrakesOff() {}

    /**
     * Returns why a turn is not to be made; empty for other items, where the brakes are on, and where it takes back what stands out.
     *
     * @param standing  of the setup on these laps
     */
    static Optional<Refusal> refusal(Turn turn, Finding target, SetupStanding standing) {
        if (!isBrakeBalance(turn) || brakesAreOn(target.phase())) {
            return Optional.empty();
        }
        return standing.unusual(target.pool()).stream().anyMatch(item -> StandingOut.takesBack(turn, item))
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Kind.BRAKE_BALANCE,
                        Refusal.text(
                                "the problem is %s, where the brakes are off",
                                target.phase().place())));
    }

    private static boolean isBrakeBalance(Turn turn) {
        return SetupCatalogue.find(turn.item().name())
                .filter(kind -> kind.family() == SetupFamily.BRAKE_BIAS_FRONT)
                .isPresent();
    }

    private static boolean brakesAreOn(Phase phase) {
        return phase != Phase.MID && phase != Phase.EXIT;
    }
}
