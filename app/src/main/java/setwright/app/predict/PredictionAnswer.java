package setwright.app.predict;

import java.util.Comparator;
import java.util.List;
import setwright.app.evidence.Answer;
import setwright.core.replay.Prediction;

/**
 * What changes would do, with the laps they would be made on.
 *
 * @param answer       the laps judged
 * @param asked        whether one change was asked for; else every item was turned by a step each way
 * @param predictions  quickest first
 */
public record PredictionAnswer(Answer answer, boolean asked, List<Prediction> predictions) {
    public PredictionAnswer {
        predictions = predictions.stream()
                .sorted(Comparator.comparingDouble(
                        prediction -> prediction.lapTimeS().central()))
                .toList();
    }
}
