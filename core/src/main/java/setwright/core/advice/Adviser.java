package setwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;

/** Looks at all evidence other than balance. */
public final class Adviser {
    private Adviser() {}

    /**
     * Returns what it says, each topic at most once for each axle; nothing where no lap can be judged.
     *
     * @param diagnosis  of the laps, with its axles
     * @param sheet      of the car as driven
     */
    public static AdviceReview review(Diagnosis diagnosis, CarSheet sheet) {
        List<Advice> advice = new ArrayList<>();
        List<Silent> silent = new ArrayList<>();
        if (!diagnosis.stint().goodLaps().isEmpty()) {
            GearingAdviser.look(diagnosis, sheet, advice, silent);
            BrakeAdviser.look(diagnosis, sheet, advice, silent);
            TravelAdviser.look(diagnosis, sheet, advice, silent);
            TemperatureAdviser.look(diagnosis, advice, silent);
            DriftAdviser.look(diagnosis, sheet, advice, silent);
        }
        return new AdviceReview(advice, silent);
    }
}
