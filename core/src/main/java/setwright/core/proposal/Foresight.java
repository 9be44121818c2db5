package setwright.core.proposal;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarBelief;
import setwright.core.judgement.Diagnosis;
import setwright.core.replay.Prediction;
import setwright.core.replay.Predictor;

/** What changes would do to a diagnosed car: replayed, with the driver's answer. */
public final class Foresight {
    private final DriversAnswer answer;
    private final Predictor predictor;

    private Foresight(DriversAnswer answer, Predictor predictor) {
        this.answer = answer;
        this.predictor = predictor;
    }

    /**
     * Prepares the laps of a diagnosis.
     *
     * @param sheet  of the car as driven
     * @param car    what is known of it
     */
    public Foresight(Diagnosis diagnosis, CarSheet sheet, CarBelief car) {
        this(
                DriversAnswer.of(diagnosis),
                Predictor.of(diagnosis.stint(), diagnosis.trace(), diagnosis.passes(), sheet, car));
    }

    /** Returns one that answers the same sooner, for many questions; see {@link Predictor#ready}. */
    public Foresight ready() {
        return new Foresight(answer, predictor.ready());
    }

    /** Returns what each change would do by itself; one thread at a time. */
    public synchronized List<Prediction> foresee(List<List<SetupChange>> candidates) {
        return predictor.predict(candidates).stream().map(answer::to).toList();
    }

    /**
     * Returns the same from fewer draws: sooner, with rougher intervals.
     *
     * @param draws  &gt;= 1
     */
    public synchronized List<Prediction> foresee(List<List<SetupChange>> candidates, int draws) {
        return predictor.predict(candidates, draws).stream().map(answer::to).toList();
    }
}
