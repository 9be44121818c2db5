package setwright.app.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.story.Story;
import setwright.app.story.Storyteller;
import setwright.app.story.TechniqueWords;
import setwright.app.text.TextTable.Column;
import setwright.app.text.TextTable.Style;
import setwright.app.units.Figures;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.judgement.TimeSince;

/** The chain of reasoning as lines of text, the verdict last: it is what stays in view. */
public final class TextReport {
    private final TextLines lines;
    private final Figures figures;

    private TextReport(Terminal terminal, Figures figures) {
        this.lines = new TextLines(terminal);
        this.figures = figures;
    }

    /** Returns the text, ending with a line break. */
    public static String write(Answer answer, Figures figures, Terminal terminal) {
        TextReport report = new TextReport(terminal, figures);
        report.all(answer);
        return report.lines.text();
    }

    private void all(Answer answer) {
        Story story = Storyteller.tell(answer, figures);
        Stint stint = answer.diagnosis().stint();
        lines.faint(stint.recording().name() + ", " + answer.car().description());
        link("Laps", story.laps());
        link("Driving", story.driving());
        link("Balance", story.balance());
        BalanceTable table = BalanceTable.of(answer.diagnosis());
        if (!table.rows().isEmpty()) {
            lines.gap();
            lines.table(table(table));
            lines.note("Balance in deg against "
                    + table.baseline().map(name -> "the baseline").orElse("a balanced car")
                    + ", median of the laps; + understeer, - oversteer; in brackets: not clear of chance."
                    + (table.since().isEmpty()
                            ? ""
                            : " Time in s more than in the baseline, with the straight after the corner."));
        }
        link("Cause", story.cause());
        link("Pattern", story.pattern());
        if (!story.why().isEmpty()) {
            lines.gap();
            lines.paragraphs("Why", story.why());
        }
        if (!story.technique().isEmpty()) {
            lines.gap();
            lines.paragraphs("Driver", TechniqueWords.tell(story.technique(), figures));
        }
        link("Besides", story.besides());
        link("Sensors", story.sensors());
        lines.gap();
        lines.paragraph("Verdict", story.headline());
        lines.paragraph("", story.reason());
        lines.numbered("Next", story.next());
        lines.gap();
        lines.faint(Story.CAUTION);
    }

    private void link(String name, Story.Link link) {
        lines.gap();
        lines.paragraph(name, link.answer());
        link.details().forEach(detail -> lines.paragraph("", detail));
    }

    private TextTable table(BalanceTable table) {
        List<Column> columns = new ArrayList<>(List.of(
                new Column("corner", true, 9),
                new Column("turn", false, 3),
                new Column("slowest, " + figures.units().speedUnit(), true, 2),
                new Column("braking", true, 8),
                new Column("entry", true, 8),
                new Column("mid", true, 8),
                new Column("exit", true, 8)));
        if (!table.since().isEmpty()) {
            columns.add(new Column("time", true, 7));
        }
        columns.add(new Column("laps", true, 1));
        columns.add(new Column("driving", false, 4));
        return new TextTable(
                columns, table.rows().stream().map(row -> cells(row, table)).toList());
    }

    private List<TextTable.Cell> cells(Row row, BalanceTable table) {
        List<TextTable.Cell> cells = new ArrayList<>();
        cells.add(TextTable.Cell.of(String.valueOf(row.corner().number())));
        cells.add(TextTable.Cell.of(row.corner().direction().name().toLowerCase(Locale.ROOT) + ", "
                + row.speedClass().words()));
        cells.add(TextTable.Cell.of(figures.number(figures.units().speed(row.lowestSpeedMps()), 0)));
        Arrays.stream(Phase.values())
                .map(phase -> row.cell(phase)
                        .filter(cell -> Double.isFinite(cell.excess().median()))
                        .map(cell -> value(cell, row.repeatable()))
                        .orElse(TextTable.Cell.of("")))
                .forEach(cells::add);
        if (!table.since().isEmpty()) {
            cells.add(time(table.since(row)));
        }
        cells.add(TextTable.Cell.of(String.valueOf(row.passes().size())));
        cells.add(TextTable.Cell.of(row.repeatable() ? "steady" : "left out"));
        return cells;
    }

    private TextTable.Cell time(Optional<TimeSince.Difference> since) {
        return since.map(found -> {
                    String value = figures.signed(found.seconds(), 2);
                    return found.clear()
                            ? TextTable.Cell.of(value + " ")
                            : new TextTable.Cell("(" + value + ")", Style.FAINT);
                })
                .orElse(TextTable.Cell.of(""));
    }

    private TextTable.Cell value(Cell cell, boolean judged) {
        double degrees = Math.toDegrees(cell.excess().median());
        String value = figures.signed(degrees, 2);
        if (!judged || !cell.evident()) {
            return new TextTable.Cell("(" + value + ")", Style.FAINT);
        }
        return new TextTable.Cell(value + " ", degrees < 0.0 ? Style.SLIDE : Style.PUSH);
    }
}
