package setwright.core.replay;

import java.util.List;
import java.util.Optional;
import setwright.core.car.SetupChange;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * What a change of setup would have done on the laps that were driven.
 *
 * @param changes      the items turned together; usually one
 * @param corners      effect in each corner, in driving order
 * @param phases       balance pooled over corners: each phase for all corners and for each speed class that has it
 * @param lapTimeS     change of the lap time, s; negative: quicker
 * @param selectivity  for each pooled phase and class, in the order of {@code phases}: its share of the whole effect, 0..1;
 *                     equal shares mean a global change, one near 1 a change for that phase alone
 * @param lap          effect over the lap
 * @param reasons      why, in plain sentences with figures: where the weight moves and what that does to which axle
 * @param doubts       what the prediction rests on that is assumed, and paddock rules that disagree, in plain sentences
 */
public record Prediction(
        List<SetupChange> changes,
        List<CornerEffect> corners,
        List<PhaseEffect> phases,
        Effect lapTimeS,
        List<Double> selectivity,
        LapEffect lap,
        List<String> reasons,
        List<String> doubts) {
    public Prediction {
        changes = List.copyOf(changes);
        corners = List.copyOf(corners);
        phases = List.copyOf(phases);
        selectivity = List.copyOf(selectivity);
        reasons = List.copyOf(reasons);
        doubts = List.copyOf(doubts);
    }

    Prediction because(List<String> newReasons, List<String> newDoubts) {
        return new Prediction(changes, corners, phases, lapTimeS, selectivity, lap, newReasons, newDoubts);
    }

    /** Returns the pooled change of balance in a phase; of all corners when the class is empty. */
    public Optional<Effect> balance(Phase phase, Optional<SpeedClass> speedClass) {
        return phases.stream()
                .filter(effect -> effect.phase() == phase && effect.speedClass().equals(speedClass))
                .map(PhaseEffect::balance)
                .findFirst();
    }

    /** Returns the pooled change of balance; in all corners where the laps have none of these speeds. */
    public Optional<Effect> moved(Pool pool) {
        return balance(pool.phase(), pool.speedClass()).or(() -> balance(pool.phase(), Optional.empty()));
    }
}
