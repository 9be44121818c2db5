package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import setwright.app.evidence.BalanceTable;
import setwright.app.units.Figures;
import setwright.core.explanation.Reason;
import setwright.core.explanation.VerdictExplainer;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;
import setwright.core.judgement.LapsNeeded;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.technique.TechniqueLever;

/** The verdict and what to do next. */
final class VerdictWords {
    /** As many tasks as a driver takes out on the circuit. */
    private static final int MOST_TASKS = 3;

    private final Diagnosis diagnosis;
    private final BalanceTable table;
    private final List<TechniqueLever> levers;
    private final Figures figures;

    VerdictWords(Diagnosis diagnosis, BalanceTable table, List<TechniqueLever> levers, Figures figures) {
        this.levers = List.copyOf(levers);
        this.diagnosis = diagnosis;
        this.table = table;
        this.figures = figures;
    }

    String headline() {
        Optional<Finding> top = diagnosis.findings().stream().findFirst();
        return switch (diagnosis.verdict()) {
            case CHANGE_THE_CAR ->
                "Change the car"
                        + top.map(finding -> ": " + FindingWords.name(finding) + " "
                                        + FindingWords.costs(finding, figures) + ".")
                                .orElse(".");
            case COACH_THE_DRIVER -> coachHeadline(top);
            case NOTHING_TO_CHANGE -> "Nothing to change: no problem of the car repeats beyond chance.";
            case NOT_ENOUGH_EVIDENCE -> "Not enough evidence to say what is wrong.";
        };
    }

    private String coachHeadline(Optional<Finding> top) {
        if (!diagnosis.repeatability().repeatable()) {
            return "Coach the driver first: these laps differ too much to judge the car.";
        }
        return top.map(finding -> "Coach the driver: " + FindingWords.name(finding) + " comes from the driving"
                        + (finding.price().isGain()
                                ? ", though the laps are " + FindingWords.price(finding, figures)
                                : " and " + FindingWords.costs(finding, figures))
                        + ".")
                .or(() -> diagnosis.faults().stream()
                        .filter(DrivingFault::habit)
                        .findFirst()
                        .map(habit -> "Coach the driver: " + habit.kind() + "."))
                .orElse("Coach the driver: the car does what it is asked to.");
    }

    String reason() {
        return Figures.sentence(diagnosis.reason());
    }

    List<String> next() {
        return switch (diagnosis.verdict()) {
            case CHANGE_THE_CAR -> change();
            case COACH_THE_DRIVER -> coach();
            case NOTHING_TO_CHANGE ->
                List.of(
                        diagnosis.grounds().baseline().isPresent()
                                ? "Leave the car as it is and keep these laps to compare with."
                                : "Leave the car as it is and keep these laps: as a baseline, said to be in good order, they show faults of"
                                        + " a fifth of a degree the next time.",
                        "Look for time in the driving: the corners that scatter most are under Driving.");
            case NOT_ENOUGH_EVIDENCE -> whatWouldTell();
        };
    }

    /** More laps are asked for only where they would help. */
    private List<String> whatWouldTell() {
        int missing = LapsNeeded.FEWEST - diagnosis.stint().goodLaps().size();
        OptionalInt more = missing > 0 ? OptionalInt.of(missing) : LapsNeeded.forVerdict(diagnosis);
        if (diagnosis.trace().steering().contradicts()) {
            return List.of(
                    "Correct the steering ratio or the wheelbase on the car sheet: turn the steering wheel by a known angle, see how far the"
                            + " front wheels turn, and divide the first by the second.",
                    more.isPresent()
                            ? "Then ask again, with " + laps(more) + "."
                            : "Then ask again with these same laps: no others are needed.");
        }
        if (missing <= 0 && diagnosis.grounds().losesTimeSinceAChange()) {
            return backToBack();
        }
        if (more.isEmpty() && !diagnosis.grounds().considered().isEmpty()) {
            return List.of(settling(), "Until then leave the car as it is.");
        }
        return List.of(
                "Record " + laps(more) + " in one run, at a steady pace and without traffic, and ask again.",
                "Which laps and corners could not be used, and why, stands under Laps and Driving.");
    }

    private String settling() {
        return VerdictExplainer.explain(diagnosis).stream()
                .filter(reason -> reason.kind() == Reason.Kind.TO_SETTLE)
                .map(Reason::sentence)
                .findFirst()
                .orElseThrow();
    }

    private List<String> backToBack() {
        return List.of(
                "Put back what was changed since the baseline ("
                        + diagnosis.grounds().standing().changed().stream()
                                .map(change -> change.words() + " " + change.from() + ", now " + change.to())
                                .collect(Collectors.joining("; "))
                        + ") and drive both back to back; trial judge tells what it did.",
                "Tyres, fuel and track make laps slower as well: keep them alike.");
    }

    private static String laps(OptionalInt more) {
        return more.isEmpty()
                ? "more laps"
                : "at least " + more.getAsInt() + (more.getAsInt() == 1 ? " more lap" : " more laps") + " like these";
    }

    private List<String> change() {
        List<String> next = new ArrayList<>();
        levers.stream()
                .filter(lever -> lever.rank() == 1)
                .findFirst()
                .ifPresent(lever -> next.add("Technique first, it is free: "
                        + Figures.uncapital(TechniqueWords.move(lever, figures)) + " in "
                        + Figures.corners(TechniqueWords.corners(lever)) + "."));
        diagnosis.findings().stream().findFirst().ifPresent(finding -> {
            String axle = finding.balance() == BalanceSign.OVERSTEER ? "rear" : "front";
            next.add("Make one change, and only one, that helps the " + axle + " axle "
                    + BalanceWords.when(finding.phase())
                    + (finding.phase() == Phase.MID ? " of the corner" : "") + ". Look at "
                    + Figures.corners(finding.corners())
                    + " first; propose weighs all items and names the one to turn.");
        });
        Repeatability driving = diagnosis.repeatability();
        if (Double.isFinite(driving.smallestTimeS()) && Double.isFinite(driving.smallestBalanceRad())) {
            next.add("Then run as many laps again and compare the balance: laps like these show a change of "
                    + figures.degreesSize(driving.smallestBalanceRad()) + ", or of "
                    + figures.seconds(driving.smallestTimeS(), 2) + " in lap time.");
        }
        return next;
    }

    private List<String> coach() {
        List<String> next = new ArrayList<>();
        boolean repeatable = diagnosis.repeatability().repeatable();
        if (!repeatable) {
            diagnosis.repeatability().corners().stream()
                    .filter(entry -> !entry.repeatable())
                    .limit(MOST_TASKS)
                    .forEach(entry -> next.add(steady(entry)));
        }
        diagnosis.faults().stream()
                .sorted(Comparator.comparing(DrivingFault::habit)
                        .thenComparingDouble(DrivingFault::lapShare)
                        .reversed())
                .limit(MOST_TASKS)
                .forEach(fault -> next.add("Work on: " + fault.kind() + " (" + Figures.corners(fault.corners()) + ")"
                        + lever(fault) + "."));
        next.add(
                repeatable ? "Leave the car alone until that is cured." : "Leave the car alone until the laps repeat.");
        return next;
    }

    private String lever(DrivingFault fault) {
        return levers.stream()
                .filter(lever -> lever.fault().filter(fault::equals).isPresent())
                .findFirst()
                .map(lever -> ": " + Figures.uncapital(TechniqueWords.move(lever, figures)))
                .orElse("");
    }

    private String steady(AtCorner entry) {
        String now = DrivingWords.scatter(entry, entry.worst(), figures)
                .map(text -> "; it now moves by " + text)
                .orElse("");
        String where = table.row(entry.corner())
                .map(row -> " (" + figures.speed(row.lowestSpeedMps()) + ")")
                .orElse("");
        return "Corner " + entry.corner() + where + ": the same "
                + entry.worst().words() + " each lap" + now + ".";
    }
}
