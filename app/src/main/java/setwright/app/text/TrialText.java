package setwright.app.text;

import java.util.List;
import setwright.app.story.Story;
import setwright.app.story.TrialWords;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.trial.TrialAnswer;
import setwright.app.units.Figures;
import setwright.core.trial.Trial;

/** What came of a change, as lines of text: what to do first. */
public final class TrialText {
    private TrialText() {}

    /** Returns the text, ending with a line break. */
    public static String write(TrialAnswer answer, Figures figures, Terminal terminal) {
        Trial trial = answer.trial();
        TrialWords words = new TrialWords(trial, figures);
        TextLines lines = new TextLines(terminal);
        lines.wide(words.headline() + ".");
        lines.faint("Changed: " + TrialWords.change(answer) + " Runs: " + words.runs());
        lines.gap();
        lines.paragraph("Reason", trial.reason());
        lines.paragraphs("", words.lap());
        lines.paragraphs("", words.predicted(answer));
        lines.paragraphs("", words.target());
        if (!words.more().isEmpty()) {
            lines.gap();
            lines.paragraphs("Next", words.more());
        }
        if (!trial.doubts().isEmpty()) {
            lines.gap();
            lines.paragraphs("Doubts", trial.doubts());
        }
        if (!answer.aside().isEmpty()) {
            lines.gap();
            lines.paragraphs("Aside", answer.aside());
        }
        if (!trial.sectors().isEmpty()) {
            lines.gap();
            lines.paragraph("Sectors", "With the change less without.");
            lines.table(new TextTable(
                    List.of(
                            new Column("", false, 9),
                            new Column("s", true, 8),
                            new Column("95 in 100", false, 6),
                            new Column("", false, 7)),
                    trial.sectors().stream()
                            .map(found -> List.of(
                                    Cell.of(TrialWords.sector(answer, found)),
                                    Cell.of(figures.signed(found.timeS().value(), 2)),
                                    Cell.of(figures.signed(found.timeS().low(), 2) + " to "
                                            + figures.signed(found.timeS().high(), 2)),
                                    Cell.of(TrialWords.chance(found.clear()))))
                            .toList()));
        }
        if (!trial.besides().isEmpty()) {
            lines.gap();
            lines.paragraph("Balance", "With the change less without, + toward understeer.");
            lines.table(new TextTable(
                    List.of(
                            new Column("", false, 9),
                            new Column("deg", true, 8),
                            new Column("95 in 100", false, 6),
                            new Column("", false, 7),
                            new Column("predicted", true, 5),
                            new Column("8 in 10", false, 4)),
                    trial.besides().stream()
                            .map(found -> List.of(
                                    Cell.of(TrialWords.place(found.pool())),
                                    Cell.of(words.degrees(found.balanceRad().value())),
                                    Cell.of(words.degrees(found.balanceRad().low()) + " to "
                                            + words.degrees(found.balanceRad().high())),
                                    Cell.of(TrialWords.chance(found.clear())),
                                    Cell.of(words.predicted(answer, found.pool())),
                                    Cell.of(words.predictedRange(answer, found.pool()))))
                            .toList()));
        }
        lines.gap();
        lines.faint(Story.CAUTION);
        return lines.text();
    }
}
