package setwright.core.judgement;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Finding.Cause;
import setwright.core.standing.SetupStanding;
import setwright.core.standing.TimeCost;

/**
 * Finds the problem that shows as a level of balance, in all corners or at one end of the speed range: some cars never let an
 * axle go, they just push, or just turn more than they should.
 */
final class LevelPattern {
    /** One that shows in every phase of every corner is with half of that. */
    private static final double LEAST_EVERYWHERE_RAD = 0.5 * Yardstick.LEAST_RAD;
    /** A corner shows it with half of what the pool does. */
    private static final double SHOWS = 0.5;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;
    private final LevelSpeeds speeds;
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
        this.speeds = new LevelSpeeds(passes, belief, standing);
        this.triggers = triggers;
        this.prices = prices;
    }

    /** Returns the largest level that is worth naming, however probable; empty without corners to judge by. */
    static Optional<Finding> find(
            List<CornerPass> passes,
            BalanceBelief belief,
            SetupStanding standing,
            TriggerJudge triggers,
            PriceEstimator prices) {
        LevelPattern pattern = new LevelPattern(passes, belief, standing, triggers, prices);
        return (belief.measured() ? pattern.named() : pattern.largest()).map(pattern::finding);
    }

    /** Where the laps tell each place by itself. */
    private Optional<LevelPlace> named() {
        return LevelName.of(belief.levels()).flatMap(level -> place(level.phase(), level.speed()));
    }

    /** Where the car is reckoned. */
    private Optional<LevelPlace> largest() {
        return BalanceBelief.PHASES.stream()
                .flatMap(phase -> place(phase, speeds.of(phase)).stream())
                .max(Comparator.comparingDouble(LevelPlace::sizeRad));
    }

    private Optional<LevelPlace> place(Phase phase, SpeedRange range) {
        return belief.at(phase, range).map(estimate -> new LevelPlace(phase, range, estimate));
    }

    /** Probability that the car has such a problem: there, or everywhere and the same way. */
    private double probability(LevelPlace place) {
        double everywhere = belief.everywhere()
                .filter(all -> all.meanRad() * place.estimate().meanRad() > 0.0)
                .map(all -> all.beyond(LEAST_EVERYWHERE_RAD))
                .orElse(0.0);
        return Math.max(place.estimate().beyond(Yardstick.LEAST_RAD), everywhere);
    }

    private Finding finding(LevelPlace place) {
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
        Optional<SpeedDependence> dependence = speeds.dependence(place.phase());
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
                dependence,
                new LevelReasons(belief, standing).why(place, dependence, evidence, car));
    }

    /** Corners of these speeds in which the setup, or the laps where the sheet tells nothing, show it. */
    private List<Integer> corners(LevelPlace place) {
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
}
