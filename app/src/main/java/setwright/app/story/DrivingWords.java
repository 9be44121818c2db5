package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.driving.DrivingReviewer;

/** Is the driving repeatable? */
final class DrivingWords {
    /** Below it nothing can be said of any corner, so that naming each would be noise. */
    private static final int FEWEST_LAPS = 3;

    private DrivingWords() {}

    static Story.Link tell(Diagnosis diagnosis, Figures figures) {
        Repeatability driving = diagnosis.repeatability();
        List<String> details = new ArrayList<>();
        List<AtCorner> out =
                driving.corners().stream().filter(entry -> !entry.repeatable()).toList();
        if (!diagnosis.passes().isEmpty()) {
            details.addAll(CoachWords.places(DrivingReviewer.review(diagnosis), figures));
        }
        boolean tooFewLaps = diagnosis.stint().goodLaps().size() < FEWEST_LAPS;
        if (!tooFewLaps) {
            out.forEach(entry -> details.add(notSteady(entry, figures)));
        }
        diagnosis.faults().forEach(fault -> details.add(CoachWords.fault(fault, figures)));
        return new Story.Link(
                "Is the driving repeatable?",
                driving.why().isBlank() ? counted(driving) : Figures.sentence(driving.why()),
                details);
    }

    private static String counted(Repeatability driving) {
        long steady = driving.corners().stream().filter(AtCorner::repeatable).count();
        int all = driving.corners().size();
        String whole = driving.repeatable() ? "Repeatable" : "Not repeatable";
        return all == 0 ? whole + "." : whole + ": steady in " + steady + " of " + all + " corners.";
    }

    static String notSteady(AtCorner entry, Figures figures) {
        String moves = scatter(entry, entry.worst(), figures)
                .map(text -> "; the " + entry.worst().words() + " moves by " + text + " from lap to lap")
                .orElse("");
        String why = entry.why().isEmpty() ? "the driving differs from lap to lap" : entry.why();
        return "Corner " + entry.corner() + " is left out: " + why + moves + ".";
    }

    /** The scatter of a measure at a corner in the user's unit, when the corner has that measure. */
    static Optional<String> scatter(AtCorner entry, Measure measure, Figures figures) {
        return Optional.ofNullable(entry.scatter().get(measure))
                .filter(Double::isFinite)
                .map(value -> inUsersUnit(measure, value, figures));
    }

    private static String inUsersUnit(Measure measure, double value, Figures figures) {
        return switch (measure.unit()) {
            case "m" -> figures.distance(value);
            case "km/h" ->
                figures.number(figures.units().speed(value / 3.6), 1) + " "
                        + figures.units().speedUnit();
            default -> figures.number(value, 1) + " " + measure.unit();
        };
    }
}
