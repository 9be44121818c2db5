package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/**
 * Predicted beside true effects of every change whose truth is known. A change that ended in a spin leaves the comparison: its
 * lap time and balance are those of the spin.
 *
 * @param name       of the stint
 * @param predicted  whether there is a predictor
 * @param balance    effects on the balance in each cell whose noise is known, deg
 * @param lapTime    effects on the lap time, s; clear beyond twice the truth's own noise
 * @param spun       number of changes left out because of a spin
 */
record ChangeComparison(
        String name, boolean predicted, List<ChangeEffect> balance, List<ChangeEffect> lapTime, int spun) {
    /** Ranks of fewer changes say nothing. */
    private static final int FEWEST_RANKS = 5;

    static ChangeComparison of(StintRun run) {
        return of(run.name(), run.practice().truth(), run.predicted());
    }

    static ChangeComparison of(String name, Truth truth, Optional<List<Prediction>> predicted) {
        List<Truth.Change> changes = truth.triedChanges();
        List<ChangeEffect> balance = new ArrayList<>();
        List<ChangeEffect> lapTime = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            Truth.Change change = changes.get(i);
            if (change.spins() == 0) {
                int index = i;
                Optional<Prediction> answer =
                        predicted.filter(all -> index < all.size()).map(all -> all.get(index));
                lapTime.add(new ChangeEffect(
                        change,
                        "lap time",
                        change.lapTimeDeltaS(),
                        ChangeEffect.STANDARD_DEVIATIONS * truth.lapTimeNoiseS(),
                        answer.map(Prediction::lapTimeS)));
                ChangeCell.ALL.forEach(
                        cell -> effect(changes, change, cell, answer).ifPresent(balance::add));
            }
        }
        return new ChangeComparison(name, predicted.isPresent(), balance, lapTime, changes.size() - lapTime.size());
    }

    private static Optional<ChangeEffect> effect(
            List<Truth.Change> changes, Truth.Change change, ChangeCell cell, Optional<Prediction> answer) {
        OptionalDouble truth = change.balanceDeg(cell);
        OptionalDouble clearAbove = ChangeNoise.clearAboveDeg(changes, cell);
        if (truth.isEmpty() || clearAbove.isEmpty()) {
            return Optional.empty();
        }
        Optional<Effect> predicted = answer.flatMap(
                        prediction -> prediction.balance(cell.phase(), Optional.of(cell.speed())))
                .map(effect -> effect.times(Math.toDegrees(1.0)));
        return Optional.of(
                new ChangeEffect(change, cell.words(), truth.getAsDouble(), clearAbove.getAsDouble(), predicted));
    }

    /** Returns the effects that are clear of their noise. */
    static List<ChangeEffect> clear(List<ChangeEffect> effects) {
        return effects.stream().filter(ChangeEffect::clear).toList();
    }

    /** Returns how many of some effects have the true sign. */
    static Count right(List<ChangeEffect> effects) {
        return effects.stream().map(ChangeEffect::count).reduce(new Count(0, 0), Count::plus);
    }

    /** Returns the clear effects of both kinds. */
    List<ChangeEffect> allClear() {
        return Stream.of(balance, lapTime)
                .flatMap(List::stream)
                .filter(ChangeEffect::clear)
                .toList();
    }

    /**
     * Returns how many items have the true sign of their lap time when they are turned from the lower value to the higher one:
     * the difference of an item's two changes. The run that all changes are compared with drops out of it. Where that run was
     * a lucky one, every change looks slower, which no prediction can foresee. Counted are items beyond twice the noise of such
     * a difference, the square root of two times that of one change.
     */
    Count lapTimeUpAgainstDown() {
        Count count = new Count(0, 0);
        for (ChangeEffect up : lapTime) {
            Optional<ChangeEffect> down = lapTime.stream()
                    .filter(other -> other.change().item().equals(up.change().item())
                            && other.change().to() < up.change().to())
                    .findFirst();
            if (down.isPresent()) {
                double truth = up.truth() - down.get().truth();
                double answer = up.central() - down.get().central();
                if (Math.abs(truth) > Math.sqrt(2.0) * up.clearAbove()) {
                    count = count.plus(Count.of(truth * answer > 0.0));
                }
            }
        }
        return count;
    }

    /** Returns the rank correlation of predicted and true lap times over all changes; NaN where ranks say nothing. */
    double lapTimeRanks() {
        return ranks(lapTime);
    }

    /** Returns the rank correlation of predicted and true balance over all changes in a cell; NaN where ranks say nothing. */
    double ranks(ChangeCell cell) {
        return ranks(balance.stream()
                .filter(effect -> effect.where().equals(cell.words()))
                .toList());
    }

    /** Returns the mean over the cells that have ranks; NaN without one. */
    double meanRanks() {
        return ChangeCell.ALL.stream()
                .mapToDouble(this::ranks)
                .filter(Double::isFinite)
                .average()
                .orElse(Double.NaN);
    }

    private static double ranks(List<ChangeEffect> effects) {
        List<ChangeEffect> answered =
                effects.stream().filter(effect -> effect.answer().isPresent()).toList();
        return answered.size() < FEWEST_RANKS
                ? Double.NaN
                : new SpearmansCorrelation()
                        .correlation(
                                answered.stream()
                                        .mapToDouble(ChangeEffect::truth)
                                        .toArray(),
                                answered.stream()
                                        .mapToDouble(effect ->
                                                effect.answer().orElseThrow().central())
                                        .toArray());
    }
}
