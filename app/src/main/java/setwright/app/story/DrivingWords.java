package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;

/** Is the driving repeatable? */
final class DrivingWords {
    private DrivingWords() {}

    static Story.Link tell(Diagnosis diagnosis, Figures figures) {
        Repeatability driving = diagnosis.repeatability();
        List<String> details = new ArrayList<>();
        driving.corners().stream()
                .filter(entry -> !entry.repeatable())
                .forEach(entry -> details.add(notSteady(entry, figures)));
        diagnosis.faults().forEach(fault -> details.add(fault(fault, figures)));
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
        String size = scatter(entry, entry.worst(), figures)
                .map(text -> " moves by " + text + " from lap to lap")
                .orElse(" differs from lap to lap");
        return "Corner " + entry.corner() + " is left out: the " + entry.worst().words() + size + ".";
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

    private static String fault(DrivingFault fault, Figures figures) {
        String size = Double.isFinite(fault.size()) && !fault.unit().isEmpty()
                ? ", " + figures.number(fault.size(), 2) + " " + fault.unit()
                : "";
        return Figures.sentence(fault.kind() + " in " + Figures.corners(fault.corners()) + ", "
                + figures.percent(fault.lapShare()) + " of the passes" + size);
    }
}
