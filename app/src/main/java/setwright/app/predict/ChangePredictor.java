package setwright.app.predict;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.judgement.Diagnosis;
import setwright.core.replay.Prediction;

/** Says what changes of setup would do on the laps of a diagnosis. */
@FunctionalInterface
public interface ChangePredictor {

    /**
     * Predicts each candidate.
     *
     * @param diagnosis   the laps and what was seen in them
     * @param car         as it was driven
     * @param candidates  changes that are turned together
     * @return a prediction for each candidate, in order; none when the laps do not allow any
     */
    List<Prediction> predict(Diagnosis diagnosis, CarSheet car, List<List<SetupChange>> candidates);
}
