package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import setwright.app.story.Story;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.trial.PlanAnswer;
import setwright.app.trial.TrialChanges;
import setwright.app.units.Figures;
import setwright.core.trial.PlannedTrial;
import setwright.core.trial.PlannedTrial.Expected;

/** How a change is to be tried, as lines of text. */
public final class PlanText {
    private static final int MOST_LETTERS = 5;

    private PlanText() {}

    /** Returns the text, ending with a line break. */
    public static String write(PlanAnswer answer, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        boolean chosen = answer.expected().isPresent();
        lines.wide(
                answer.changes().isEmpty()
                        ? "Nothing is proposed; a trial of any one change would show this much."
                        : "Try " + TrialChanges.words(answer.changes())
                                + (answer.together().isPresent() ? ", together." : ", alone."));
        answer.expected().ifPresent(expected -> lines.paragraph("Expected", expected(expected, figures)));
        lines.gap();
        if (answer.plans().isEmpty()) {
            lines.paragraph(
                    "Plan",
                    "Too few laps tell this driver's scatter: three that can be judged are the least, six are better.");
        } else {
            int laps = answer.plans().get(0).laps();
            lines.paragraph(
                    "Plan",
                    "A without the change, B with it, as many laps a run as in this one (" + laps
                            + "): what four of five such trials would see; and how many laps a run would show what is expected.");
            List<Column> columns = new ArrayList<>(List.of(
                    new Column("runs", false, 9),
                    new Column("lap time, s", true, 8),
                    new Column("balance, deg", true, 7),
                    new Column("laps: time", true, 6),
                    new Column("balance", true, 5)));
            lines.table(new TextTable(
                    columns,
                    answer.plans().stream()
                            .map(plan -> row(plan, figures, chosen))
                            .toList()));
            lines.gap();
            answer.opened()
                    .ifPresent(trial -> lines.paragraph(
                            "Opened",
                            "Trial " + trial.number() + ": "
                                    + String.join(" ", trial.order().split("")) + ", " + trial.laps()
                                    + " laps each; these laps are its first run. Until it is judged or dropped, nothing else is"
                                    + " changed on this car."));
            lines.paragraph(
                    "Mind",
                    "Come back to A at the end: only then can what the day does be told from the change. Laps of one run are no"
                            + " replicates; where many laps do not do, more runs do. Judge with trial judge.");
        }
        lines.gap();
        lines.faint(Story.CAUTION);
        return lines.text();
    }

    private static String expected(Expected expected, Figures figures) {
        return "Lap time " + figures.signed(expected.timeS(), 2) + " s"
                + (expected.targetRad().isPresent()
                        ? ", balance there "
                                + figures.signed(
                                        Math.toDegrees(expected.targetRad().getAsDouble()), 2)
                                + " deg"
                        : "")
                + ".";
    }

    private static List<Cell> row(PlannedTrial plan, Figures figures, boolean chosen) {
        return List.of(
                Cell.of(order(plan.plan().letters())),
                Cell.of(figures.number(plan.leastTimeS(), 2)),
                Cell.of(
                        plan.leastTargetRad().isPresent()
                                ? figures.number(
                                        Math.toDegrees(plan.leastTargetRad().getAsDouble()), 2)
                                : "-"),
                Cell.of(chosen ? laps(plan.lapsForTime()) : "-"),
                Cell.of(chosen && plan.leastTargetRad().isPresent() ? laps(plan.lapsForTarget()) : "-"));
    }

    /** Letters apart; many pairs are counted. */
    private static String order(String letters) {
        int pairs = letters.length() / 2;
        return letters.length() <= MOST_LETTERS
                ? String.join(" ", letters.split(""))
                : "A B, " + pairs + " times" + (letters.endsWith("A") ? ", A" : "");
    }

    private static String laps(OptionalInt laps) {
        return laps.isPresent() ? Integer.toString(laps.getAsInt()) : "over 40";
    }
}
