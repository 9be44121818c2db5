package setwright.core.judgement;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.core.baseline.Baseline;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.SetupStanding.Yard;
import setwright.core.standing.TimeCost;

/** Why a level of balance is believed, with its figures: what the setup does, what the laps show, what both say together. */
final class LevelReasons {
    /** Another way of driving is told when it may do a tenth of what a typical setup change does. */
    private static final double LEAST_OTHERWISE_RAD = 0.05 * Yardstick.BALANCE_RAD;

    private final BalanceBelief belief;
    private final SetupStanding standing;

    LevelReasons(BalanceBelief belief, SetupStanding standing) {
        this.belief = belief;
        this.standing = standing;
    }

    /** Returns it, one sentence each. */
    List<String> why(LevelPlace place, Optional<SpeedDependence> dependence, TriggerEvidence evidence, TimeCost car) {
        List<String> why = new ArrayList<>();
        boolean baseline = standing.yard() == Yard.BASELINE;
        Pool pool = place.pool();
        List<ItemStanding> items = standing.unusual(pool).stream()
                .filter(item -> place.direction() * item.balanceRad(pool) > 0.0)
                .toList();
        for (ItemStanding item : items) {
            why.add(String.format(
                    Locale.ROOT,
                    "The %s stands at %s %s, %s %s: replayed on these laps that makes the front slip"
                            + " %.2f deg %s %s, measured against the rear.",
                    item.item().name().replace('_', ' '),
                    plain(item.item().value()),
                    item.item().unit(),
                    baseline ? "in the baseline it was" : "the middle of its range is",
                    plain(item.usual()),
                    Math.toDegrees(Math.abs(item.balanceRad(pool))),
                    place.sign() == BalanceSign.UNDERSTEER ? "more" : "less",
                    place.phase().place()));
        }
        double excess = belief.excessRad(place.phase(), place.speed());
        why.add(String.format(
                Locale.ROOT,
                "On the laps the front slips %.2f deg %s there than %s.",
                Math.toDegrees(Math.abs(excess)),
                excess > 0.0 ? "more" : "less",
                baseline
                        ? "in the baseline over the same stretches of road"
                        : "the reference; what a healthy car shows is known to half a degree only"));
        double otherwise = belief.referenceDoubtRad(place.phase(), place.speed());
        if (otherwise > LEAST_OTHERWISE_RAD) {
            why.add(String.format(
                    Locale.ROOT,
                    "It is driven otherwise there than in the baseline, which by itself would move the balance by about %.2f deg:"
                            + " as much as faults bring about (%.2f deg) counts, what is beyond is allowed for, and half is doubt.",
                    2.0 * Math.toDegrees(otherwise),
                    Math.toDegrees(Baseline.MADE_BY_FAULTS_RAD)));
        }
        why.add(String.format(
                Locale.ROOT,
                "Both together: %.2f deg of %s, give or take %.2f deg.",
                Math.toDegrees(place.sizeRad()),
                place.sign().words(),
                Math.toDegrees(1.96 * place.estimate().deviationRad())));
        why.add(TriggerWords.sentence(evidence));
        dependence.ifPresent(found -> why.add(found.sentence()));
        why.add(String.format(
                Locale.ROOT,
                "By balance and setup the car itself loses %.2f s a lap at the same use of its grip, give or take %.2f s; what a"
                        + " driver makes of another car differs by more.",
                Math.max(0.0, car.meanS()),
                1.645 * car.deviationS()));
        return why;
    }

    /** A setting as it stands on a sheet. */
    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
