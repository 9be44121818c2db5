package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import setwright.app.evidence.PooledAnswer;
import setwright.app.story.PooledWords;
import setwright.app.story.Story;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.units.Figures;
import setwright.core.pooling.DriverStint;
import setwright.core.pooling.PooledDiagnosis;
import setwright.core.pooling.PooledFinding;

/** Several stints of one car as lines of text, the verdict last. */
public final class PooledText {
    private PooledText() {}

    /** Returns the text, ending with a line break. */
    public static String write(PooledAnswer answer, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        PooledDiagnosis pooled = answer.pooled();
        lines.faint(pooled.stints().size() + " stints, "
                + answer.answers().get(0).car().description());
        lines.gap();
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < pooled.stints().size(); i++) {
            DriverStint stint = pooled.stints().get(i);
            rows.add(List.of(
                    Cell.of(stint.driver()),
                    Cell.of(stint.diagnosis().stint().recording().name()),
                    Cell.of(String.valueOf(stint.diagnosis().stint().goodLaps().size())),
                    Cell.of(PooledWords.stint(answer, i))));
        }
        lines.wide(new TextTable(
                List.of(
                        new Column("driver", false, 9),
                        new Column("recording", false, 2),
                        new Column("laps", true, 3),
                        new Column("alone", false, 8)),
                rows));
        for (PooledFinding finding : pooled.findings()) {
            lines.gap();
            lines.paragraph("Pooled", Figures.capital(PooledWords.name(finding)) + ": " + belongs(finding) + ".");
            lines.paragraph("", finding.why());
        }
        lines.gap();
        lines.paragraph("Verdict", PooledWords.headline(pooled));
        lines.paragraph("", pooled.reason());
        lines.numbered("Next", PooledWords.next(pooled));
        lines.gap();
        lines.faint(Story.CAUTION);
        return lines.text();
    }

    private static String belongs(PooledFinding finding) {
        return switch (finding.belongsTo()) {
            case CAR -> "the car's";
            case ONE_DRIVER -> finding.driver() + "'s";
            case EVERY_DRIVER -> "every driver's";
            case UNDECIDED -> "undecided";
        };
    }
}
