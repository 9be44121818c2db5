package setwright.core.judgement;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.replay.GripWorth;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.TimeCost;

/*
 * Design note. What would the same driver gain if the problem were gone? Two witnesses again, for the car. The balance: one axle is at
 * its limit, the other leaves force unused; shared out between them, both could corner harder by half of that, and the gain in speed is
 * followed round the lap as for a change of setup, to the end of the next straight. The setup: what the items that push the
 * balance that way cost in time by the replay, against the middle of their ranges; it also hears of grip that both axles lose,
 * and of drag. They are averaged by precision. What the driver makes of it comes on top, in TimePrice; what a
 * baseline tells of it, in TimeSince.
 *
 * A third witness was tried and left out: the time of a corner against its balance, lap by lap. In 577 corners of 50 tuning cases the
 * slope has either sign (57 % positive), adds up to 2.7 s in the median and follows the true price with a correlation of -0.08: the
 * driver's pace moves both.
 */

/** Puts a price on a problem: what a lap would be quicker without it. */
final class PriceEstimator {
    /** Doubt of the time by the balance, as a share of it: the tyre curve is a guess. */
    private static final double BALANCE_DOUBT = 0.5;
    /**
     * What either witness does not see, in units of one per cent of grip: spread of the quasi-steady lap time that a fault costs the
     * true car about the estimate, tuning cases.
     */
    private static final double UNSEEN = 2.5;

    private static final double ONE_PER_CENT = 0.01;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;
    private final GripWorth worth;

    PriceEstimator(List<CornerPass> passes, BalanceBelief belief, SetupStanding standing, GripWorth worth) {
        this.passes = passes;
        this.belief = belief;
        this.standing = standing;
        this.worth = worth;
    }

    /**
     * Returns what the car itself loses a lap to a level of balance in some corners, driven with the same use of its grip; phases that
     * go the same way count with it.
     *
     * @param sizeRad  in its own phase, rad
     */
    TimeCost car(Phase phase, SpeedRange speed, BalanceSign sign, double sizeRad) {
        Set<Integer> corners = corners(speed);
        double seconds = 0.0;
        for (Phase each : BalanceBelief.PHASES) {
            double there = each == phase
                    ? sizeRad
                    : belief.at(each, speed)
                            .map(estimate -> Math.max(0.0, sign.direction() * estimate.meanRad()))
                            .orElse(0.0);
            seconds += worthS(each, corners, Yardstick.gripShare(there));
        }
        double unseen = UNSEEN * unitS();
        TimeCost balance = new TimeCost(seconds, Math.hypot(BALANCE_DOUBT * seconds, unseen));
        if (standing.isUnknown()) {
            return balance;
        }
        TimeCost setup = standing.cost(item -> BalanceBelief.PHASES.stream()
                .anyMatch(each -> sign.direction() * item.balanceRad(speed.pool(each)) > 0.0));
        return TimePrice.both(balance, new TimeCost(setup.meanS(), Math.hypot(setup.deviationS(), unseen)));
    }

    /** Prices a level of balance of which the car itself loses so much. */
    Finding.Price level(TimeCost car, BalanceSign sign, double sizeRad) {
        return TimePrice.of(car, unitS(), sign, sizeRad);
    }

    /**
     * Prices slides of the rear.
     *
     * @param corners   that show them
     * @param lapShare  of the passes there that do
     * @param sizeRad   of a usual one, rad
     */
    Finding.Price slide(Phase phase, Set<Integer> corners, double lapShare, double sizeRad) {
        double seconds = lapShare * worthS(phase, corners, Yardstick.gripShare(sizeRad));
        return TimePrice.of(new TimeCost(seconds, 0.0), unitS(), BalanceSign.OVERSTEER, sizeRad);
    }

    /** What one per cent of grip is worth a lap, s. */
    private double unitS() {
        double unit = 0.0;
        for (Phase phase : BalanceBelief.PHASES) {
            unit += worthS(phase, corners(SpeedRange.ALL), ONE_PER_CENT);
        }
        return unit;
    }

    private Set<Integer> corners(SpeedRange speed) {
        return passes.stream()
                .filter(pass -> speed.takes(pass.speedClass()))
                .map(CornerPass::corner)
                .collect(Collectors.toSet());
    }

    /** What more grip in a phase is worth a lap, s; where every lap has gaps, without what is carried on from there. */
    private double worthS(Phase phase, Set<Integer> corners, double share) {
        double seconds = worth.perLapS(phase, corners, share);
        if (Double.isFinite(seconds)) {
            return seconds;
        }
        double spent = passes.stream()
                .filter(pass -> corners.contains(pass.corner()))
                .flatMap(pass -> pass.phase(phase).stream())
                .mapToDouble(PhaseBalance::timeS)
                .sum();
        long laps = passes.stream().mapToInt(CornerPass::lap).distinct().count();
        return 0.5 * share * spent / Math.max(1L, laps);
    }
}
