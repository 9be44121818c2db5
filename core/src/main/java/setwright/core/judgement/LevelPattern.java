package setwright.core.judgement;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.judgement.Finding.Cause;
import setwright.core.replay.Pool;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;

/**
 * Finds the problem that shows as a level of balance, in all corners or at one end of the speed range: some cars never let an
 * axle go, they just push, or just turn more than they should.
 */
final class LevelPattern {
    /** An effect below a quarter of a typical setup change is not worth a change. */
    static final double LEAST_RAD = 0.25 * Yardstick.BALANCE_RAD;
    /** One that shows in every phase of every corner is with half of that. */
    private static final double LEAST_EVERYWHERE_RAD = 0.5 * LEAST_RAD;
    /** One end of the speeds with less than this share of the other's is not part of the problem (our choice). */
    private static final double ONE_END = 0.4;
    /** A corner shows it with half of what the pool does. */
    private static final double SHOWS = 0.5;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;
    private final TriggerJudge triggers;

    private LevelPattern(List<CornerPass> passes, BalanceBelief belief, SetupStanding standing, TriggerJudge triggers) {
        this.passes = passes;
        this.belief = belief;
        this.standing = standing;
        this.triggers = triggers;
    }

    /** A phase with the speeds at which it counts. */
    private record Place(Phase phase, SpeedRange speed, Estimate estimate) {
        BalanceSign sign() {
            return estimate.meanRad() >= 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
        }

        double direction() {
            return sign() == BalanceSign.UNDERSTEER ? 1.0 : -1.0;
        }

        double sizeRad() {
            return Math.abs(estimate.meanRad());
        }
    }

    /** Returns the largest level that is worth naming, however probable; empty without corners to judge by. */
    static Optional<Finding> find(
            List<CornerPass> passes, BalanceBelief belief, SetupStanding standing, TriggerJudge triggers, int laps) {
        LevelPattern pattern = new LevelPattern(passes, belief, standing, triggers);
        return BalanceBelief.PHASES.stream()
                .flatMap(pattern::place)
                .max(Comparator.comparingDouble(Place::sizeRad))
                .map(place -> pattern.finding(place, laps));
    }

    private Stream<Place> place(Phase phase) {
        Optional<Estimate> low = belief.at(phase, SpeedRange.LOW);
        Optional<Estimate> high = belief.at(phase, SpeedRange.HIGH);
        SpeedRange range = SpeedRange.ALL;
        if (low.isPresent() && high.isPresent()) {
            double slow = low.get().meanRad();
            double fast = high.get().meanRad();
            boolean fastMore = Math.abs(fast) > Math.abs(slow);
            // an end where the tyres are worked less shows less of the same fault
            double share = Math.max(
                    share(slow, fast),
                    share(belief.atTheLimit(phase, SpeedRange.LOW), belief.atTheLimit(phase, SpeedRange.HIGH)));
            range = share >= ONE_END ? SpeedRange.ALL : fastMore ? SpeedRange.HIGH : SpeedRange.LOW;
        }
        SpeedRange found = range;
        return belief.at(phase, range).map(estimate -> new Place(phase, found, estimate)).stream();
    }

    /** The smaller of two over the larger; negative when they go different ways. */
    private static double share(double one, double other) {
        return Math.abs(one) > Math.abs(other) ? other / one : one / other;
    }

    /** Probability that the car has such a problem: there, or everywhere and the same way. */
    private double probability(Place place) {
        double everywhere = belief.everywhere()
                .filter(all -> all.meanRad() * place.estimate().meanRad() > 0.0)
                .map(all -> all.beyond(LEAST_EVERYWHERE_RAD))
                .orElse(0.0);
        return Math.max(place.estimate().beyond(LEAST_RAD), everywhere);
    }

    private Finding finding(Place place, int laps) {
        double size = place.sizeRad();
        List<Integer> corners = corners(place);
        List<PhaseBalance> there = passes.stream()
                .filter(pass -> corners.contains(pass.corner()))
                .flatMap(pass -> pass.phase(place.phase()).stream())
                .toList();
        List<PhaseBalance> worked = there.stream()
                .filter(balance -> !Double.isNaN(balance.excessRad()))
                .toList();
        TriggerEvidence evidence = triggers.ofLevel(place.phase(), place.speed(), place.sign());
        Map<Trigger, Double> probabilities = evidence.probabilities();
        return new Finding(
                place.phase(),
                place.speed(),
                place.sign(),
                TriggerWords.mostProbable(probabilities),
                probabilities,
                Cause.CAR,
                corners,
                worked.size() / Math.max(1.0, there.size()),
                true,
                probability(place),
                size,
                Math.max(0.0, size - 1.96 * place.estimate().deviationRad()),
                size + 1.96 * place.estimate().deviationRad(),
                PriceEstimator.price(
                        worked.stream()
                                .mapToDouble(balance -> balance.timeS() * Yardstick.timeShare(size))
                                .toArray(),
                        laps),
                why(place, evidence));
    }

    /** Corners of these speeds in which the setup, or the laps where the sheet tells nothing, show it. */
    private List<Integer> corners(Place place) {
        List<Integer> there = passes.stream()
                .filter(pass -> place.speed().takes(pass.speedClass()))
                .filter(pass -> pass.phase(place.phase())
                        .filter(balance -> Double.isFinite(balance.excessRad()))
                        .isPresent())
                .map(CornerPass::corner)
                .distinct()
                .sorted()
                .toList();
        double least = SHOWS * place.sizeRad();
        List<Integer> showing = there.stream()
                .filter(corner -> place.direction() * standing.balanceRad(corner, place.phase()) >= least)
                .toList();
        return showing.isEmpty() ? there : showing;
    }

    private List<String> why(Place place, TriggerEvidence evidence) {
        List<String> why = new ArrayList<>();
        Pool pool = place.speed().pool(place.phase());
        List<ItemStanding> items = standing.unusual(pool).stream()
                .filter(item -> place.direction() * item.balanceRad(pool) > 0.0)
                .toList();
        for (ItemStanding item : items) {
            why.add(String.format(
                    Locale.ROOT,
                    "The %s stands at %s %s, the middle of its range is %s: replayed on these laps that makes the front slip"
                            + " %.2f deg %s %s, measured against the rear.",
                    item.item().name().replace('_', ' '),
                    plain(item.item().value()),
                    item.item().unit(),
                    plain(item.item().middle()),
                    Math.toDegrees(Math.abs(item.balanceRad(pool))),
                    place.sign() == BalanceSign.UNDERSTEER ? "more" : "less",
                    place.phase().place()));
        }
        double excess = belief.excessRad(place.phase(), place.speed());
        why.add(String.format(
                Locale.ROOT,
                "On the laps the front slips %.2f deg %s there than the reference; what a healthy car shows is known to"
                        + " half a degree only.",
                Math.toDegrees(Math.abs(excess)),
                excess > 0.0 ? "more" : "less"));
        why.add(String.format(
                Locale.ROOT,
                "Both together: %.2f deg of %s, give or take %.2f deg.",
                Math.toDegrees(place.sizeRad()),
                place.sign().words(),
                Math.toDegrees(1.96 * place.estimate().deviationRad())));
        why.add(TriggerWords.sentence(evidence));
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
