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
        List<Look> looks = List.of(
                (advice, silent) -> GearingAdviser.look(diagnosis, sheet, advice, silent),
                (advice, silent) -> BrakeAdviser.look(diagnosis, sheet, advice, silent),
                (advice, silent) -> TravelAdviser.look(diagnosis, sheet, advice, silent),
                (advice, silent) -> TemperatureAdviser.look(diagnosis, advice, silent),
                (advice, silent) -> DriftAdviser.look(diagnosis, sheet, advice, silent));
        List<AdviceReview> reviews = diagnosis.stint().goodLaps().isEmpty()
                ? List.of()
                : looks.parallelStream().map(Look::review).toList();
        return new AdviceReview(
                reviews.stream().flatMap(review -> review.advice().stream()).toList(),
                reviews.stream().flatMap(review -> review.silent().stream()).toList());
    }

    /** What one of them does: all look at the same laps, none at what another says. */
    private interface Look {
        void into(List<Advice> advice, List<Silent> silent);

        default AdviceReview review() {
            List<Advice> advice = new ArrayList<>();
            List<Silent> silent = new ArrayList<>();
            into(advice, silent);
            return new AdviceReview(advice, silent);
        }
    }
}
