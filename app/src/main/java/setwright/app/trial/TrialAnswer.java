package setwright.app.trial;

import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.core.car.setup.SetupDifference;
import setwright.core.circuit.Sectors;
import setwright.core.replay.Prediction;
import setwright.core.trial.Trial;

/**
 * What came of a change.
 *
 * @param changes   what was changed
 * @param together  why these belong together; empty for one
 * @param answers   to each run
 * @param trial     the judgement
 * @param aside     runs that do not count, each with why in a sentence
 * @param predicted  what the laps of the first run promised; empty where the change cannot be predicted
 */
public record TrialAnswer(
        List<SetupDifference> changes,
        Optional<String> together,
        List<Answer> answers,
        Trial trial,
        Optional<Prediction> predicted,
        List<String> aside) {
    public TrialAnswer {
        changes = List.copyOf(changes);
        answers = List.copyOf(answers);
        aside = List.copyOf(aside);
    }

    /** Returns the same, naming runs that do not count. */
    public TrialAnswer without(List<String> runs) {
        return new TrialAnswer(changes, together, answers, trial, predicted, runs);
    }

    /** Returns the corners of a part of the lap, counted from 1. */
    public List<Integer> sectorCorners(int sector) {
        return Sectors.of(answers.get(0).diagnosis().stint().circuit())
                .map(parts -> parts.corners().get(sector - 1))
                .orElse(List.of());
    }
}
