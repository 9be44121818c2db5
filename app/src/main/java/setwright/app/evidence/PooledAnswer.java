package setwright.app.evidence;

import java.util.List;
import setwright.core.pooling.PooledDiagnosis;

/**
 * Several recordings of one car, each judged and all held against each other.
 *
 * @param answers  one for each recording, in the order of the stints
 * @param pooled   what is common to them
 */
public record PooledAnswer(List<Answer> answers, PooledDiagnosis pooled) {
    public PooledAnswer {
        answers = List.copyOf(answers);
    }
}
