package setwright.app.predict;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.identification.FittedCar;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.proposal.DriversAnswer;
import setwright.core.replay.Prediction;

/** Predicts by fitting the car to the laps and replaying them with each change. */
public final class LapReplay {
    private LapReplay() {}

    /** Predicts each candidate, as {@link ChangePredictor} does. */
    public static List<Prediction> predict(Diagnosis diagnosis, CarSheet car, List<List<SetupChange>> candidates) {
        FittedCar fitted = Identifier.identify(
                List.of(new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes())), car);
        return DriversAnswer.foresee(diagnosis, car, fitted.belief(), candidates);
    }
}
