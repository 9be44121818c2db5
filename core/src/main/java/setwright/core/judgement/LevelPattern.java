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
import setwright.core.standing.SetupStanding.Yard;
import setwright.core.standing.TimeCost;

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
    /** All corners together are the word for a problem when they show this share of what one end does (our choice, as for the truth). */
    private static final double AS_LARGE = 0.7;
    /** The other end may go the other way by this share of the larger, and no more. */
    private static final double OPPOSED = 0.3;
    /** Another way of driving is told when it may do a tenth of what a typical setup change does. */
    private static final double LEAST_OTHERWISE_RAD = 0.05 * Yardstick.BALANCE_RAD;
    /** A corner shows it with half of what the pool does. */
    private static final double SHOWS = 0.5;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;
    private final TriggerJudge triggers;
    private final PriceEstimator prices;

    private LevelPattern(
            List<CornerPass> passes,
            BalanceBelief belief,
            SetupStanding standing,
            TriggerJudge triggers,
            PriceEstimator prices) {
        this.passes = passes;
        this.belief = belief;
        this.standing = standing;
        this.triggers = triggers;
        this.prices = prices;
    }

    /** A phase with the speeds at which it counts. */
    private record Place(Phase phase, SpeedRange speed, Estimate estimate) {
        BalanceSign sign() {
            return estimate.meanRad() >= 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
        }

        double direction() {
            return sign().direction();
        }

        double sizeRad() {
            return Math.abs(estimate.meanRad());
        }
    }

    /** Returns the largest level that is worth naming, however probable; empty without corners to judge by. */
    static Optional<Finding> find(
            List<CornerPass> passes,
            BalanceBelief belief,
            SetupStanding standing,
            TriggerJudge triggers,
            PriceEstimator prices) {
        LevelPattern pattern = new LevelPattern(passes, belief, standing, triggers, prices);
        return BalanceBelief.PHASES.stream()
                .flatMap(pattern::place)
                .max(Comparator.comparingDouble(Place::sizeRad))
                .map(pattern::finding);
    }

    private Stream<Place> place(Phase phase) {
        SpeedRange range = belief.measured() ? shown(phase) : told(phase);
        return belief.at(phase, range).map(estimate -> new Place(phase, range, estimate)).stream();
    }

    /** Where each place was measured: all corners, unless all together show much less than one end does, or the ends differ in sign. */
    private SpeedRange shown(Phase phase) {
        double low = shownRad(phase, SpeedRange.LOW);
        double high = shownRad(phase, SpeedRange.HIGH);
        double all = shownRad(phase, SpeedRange.ALL);
        double end = Math.abs(low) > Math.abs(high) ? low : high;
        boolean together = all * end > 0.0 && share(low, high) > -OPPOSED && share(all, end) >= AS_LARGE;
        return together || Math.abs(all) >= Math.abs(end)
                ? SpeedRange.ALL
                : end == low ? SpeedRange.LOW : SpeedRange.HIGH;
    }

    /** As measured: what is believed lies the nearer to nothing the fewer the corners, and would make the ends look smaller. */
    private double shownRad(Phase phase, SpeedRange range) {
        double rad = belief.excessRad(phase, range);
        return Double.isFinite(rad) ? rad : 0.0;
    }

    /** Where the car is reckoned: all corners, unless one end shows much less than the other, or the slope over v² says why. */
    private SpeedRange told(Phase phase) {
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
        SpeedDependence.Kind kind =
                slope(phase).map(found -> found.dependence().kind()).orElse(SpeedDependence.Kind.OPEN);
        if (kind == SpeedDependence.Kind.AERODYNAMIC && goesAlong(phase, high)) {
            range = SpeedRange.HIGH;
        } else if (kind == SpeedDependence.Kind.MECHANICAL && range == SpeedRange.HIGH) {
            range = SpeedRange.ALL;
        }
        return range;
    }

    /** Tells whether the fast corners show what the whole phase shows. */
    private boolean goesAlong(Phase phase, Optional<Estimate> high) {
        return high.isPresent()
                && belief.at(phase, SpeedRange.ALL)
                        .filter(all -> all.meanRad() * high.get().meanRad() > 0.0)
                        .isPresent();
    }

    private Optional<SpeedSlope> slope(Phase phase) {
        return belief.at(phase, SpeedRange.ALL).flatMap(level -> SpeedSlope.of(passes, standing, phase, level));
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

    private Finding finding(Place place) {
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
        TimeCost car = prices.car(place.phase(), place.speed(), place.sign(), size);
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
                prices.level(car, place.sign(), size),
                slope(place.phase()).map(SpeedSlope::dependence),
                why(place, evidence, car));
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

    private List<String> why(Place place, TriggerEvidence evidence, TimeCost car) {
        List<String> why = new ArrayList<>();
        boolean baseline = standing.yard() == Yard.BASELINE;
        Pool pool = place.speed().pool(place.phase());
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
                            + " half of that is allowed for, and half is doubt.",
                    2.0 * Math.toDegrees(otherwise)));
        }
        why.add(String.format(
                Locale.ROOT,
                "Both together: %.2f deg of %s, give or take %.2f deg.",
                Math.toDegrees(place.sizeRad()),
                place.sign().words(),
                Math.toDegrees(1.96 * place.estimate().deviationRad())));
        why.add(TriggerWords.sentence(evidence));
        slope(place.phase()).map(SpeedSlope::dependence).ifPresent(dependence -> why.add(dependence.sentence()));
        why.add(String.format(
                Locale.ROOT,
                "By balance and setup the car itself loses %.2f s a lap at the same use of its grip, give or take %.2f s; the"
                        + " interval of the price also holds what a driver makes of another car, which differs by more.",
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
