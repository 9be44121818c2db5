package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.evidence.PooledAnswer;
import setwright.app.units.Figures;
import setwright.core.handling.Phase;
import setwright.core.judgement.Diagnosis;
import setwright.core.pooling.PooledDiagnosis;
import setwright.core.pooling.PooledFinding;
import setwright.core.pooling.PooledFinding.Belongs;
import setwright.core.pooling.PooledFinding.ByDriver;

/** What several stints say together, in sentences. */
public final class PooledWords {
    private PooledWords() {}

    /** Returns the answer in a sentence. */
    public static String headline(PooledDiagnosis pooled) {
        Optional<PooledFinding> first = pooled.findings().stream().findFirst();
        boolean several = first.filter(finding -> finding.drivers().size() > 1).isPresent();
        String whoever = several ? " is there whoever drives." : " is in what was driven.";
        return switch (pooled.verdict()) {
            case CHANGE_THE_CAR ->
                "Change the car"
                        + first.map(finding -> ": " + name(finding) + whoever).orElse(".");
            case COACH_THE_DRIVER ->
                first.map(PooledWords::coach)
                        .orElse("Coach the drivers first: no stint is steady enough to judge the car.");
            case NOTHING_TO_CHANGE -> "Nothing to change: no problem is common to these stints.";
            case NOT_ENOUGH_EVIDENCE -> "Not enough evidence to say what is the car's and what a driver's.";
        };
    }

    private static String coach(PooledFinding finding) {
        return finding.belongsTo() == Belongs.ONE_DRIVER
                ? "Coach " + finding.driver() + ": " + name(finding) + " is more likely technique than the car."
                : "Coach every driver: " + name(finding) + " comes from the driving.";
    }

    /** Returns what is wrong and where. */
    public static String name(PooledFinding finding) {
        String where = switch (finding.speed()) {
            case ALL -> "at all speeds";
            case LOW -> "in the slower corners";
            case HIGH -> "in the faster corners";
        };
        return (finding.phase() == Phase.MID ? "mid-corner" : finding.phase().words()) + " "
                + finding.balance().words() + " " + where;
    }

    /** Returns what to do next. */
    public static List<String> next(PooledDiagnosis pooled) {
        List<String> next = new ArrayList<>();
        for (PooledFinding finding : pooled.findings()) {
            switch (finding.belongsTo()) {
                case CAR -> next.add("Make one change against " + name(finding) + ", and have each driver try it.");
                case ONE_DRIVER ->
                    next.add("Show " + finding.driver() + " the laps of the others, which lack " + name(finding)
                            + "; leave the car alone for that.");
                case EVERY_DRIVER ->
                    next.add("Work with all of them on " + name(finding) + " before the car is touched.");
                case UNDECIDED ->
                    next.add("Record another stint of each driver: " + name(finding) + " is not settled.");
            }
        }
        if (next.isEmpty()) {
            next.add("Leave the car as it is, and look at each stint's own driving.");
        }
        return next;
    }

    /** Returns what a driver has of a problem. */
    public static String part(PooledFinding finding, ByDriver part, Figures figures) {
        String laps = part.seen() + " of " + part.of() + " laps";
        return finding.level() ? figures.signed(Math.toDegrees(part.sizeRad()), 2) + " deg, " + laps : laps;
    }

    /** Returns the verdict of one stint alone. */
    public static String stint(PooledAnswer answer, int index) {
        Diagnosis diagnosis = answer.pooled().stints().get(index).diagnosis();
        return Figures.capital(diagnosis.verdict().words())
                + diagnosis.findings().stream()
                        .findFirst()
                        .map(finding -> ": " + FindingWords.name(finding))
                        .orElse("");
    }
}
