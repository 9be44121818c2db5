package setwright.app.text;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.units.Figures;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.StintLineRow;

/** The story of a logbook, as lines of text. */
public final class LogText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private LogText() {}

    /** Returns the entries under their days, each with its time, ending with a line break. */
    public static String write(List<EntryRow> entries, ZoneId zone, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        if (entries.isEmpty()) {
            lines.wide("Nothing was written.");
        }
        LocalDate day = LocalDate.MIN;
        for (EntryRow entry : entries) {
            LocalDate its = LocalDate.ofInstant(entry.writtenAt(), zone);
            if (!its.equals(day)) {
                if (!day.equals(LocalDate.MIN)) {
                    lines.gap();
                }
                lines.wide(its.toString());
                day = its;
            }
            boolean note = entry.kind().equals("note");
            lines.paragraph(
                    TIME.format(entry.writtenAt().atZone(zone)), (note ? "Note. " : "") + Wrap.clean(entry.words()));
        }
        return lines.text();
    }

    /** Returns a table of stints, ending with a line break. */
    public static String stints(List<StintLineRow> stints, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        if (stints.isEmpty()) {
            lines.wide("No stint was read yet.");
            return lines.text();
        }
        lines.wide(new TextTable(
                List.of(
                        new Column("stint", true, 9),
                        new Column("driver", false, 8),
                        new Column("car", false, 5),
                        new Column("setup", true, 7),
                        new Column("circuit", false, 4),
                        new Column("laps", true, 6),
                        new Column("best", true, 7),
                        new Column("mean", true, 5),
                        new Column("recording", false, 3),
                        new Column("", false, 2)),
                stints.stream()
                        .map(stint -> List.of(
                                Cell.of(String.valueOf(stint.id())),
                                Cell.of(stint.driver()),
                                Cell.of(stint.car()),
                                Cell.of(String.valueOf(stint.setup())),
                                Cell.of(stint.circuit()),
                                Cell.of(stint.goodLaps() + " of " + stint.laps()),
                                Cell.of(figures.lapTime(stint.bestS().orElse(Double.NaN))),
                                Cell.of(figures.lapTime(stint.meanS().orElse(Double.NaN))),
                                Cell.of(stint.recording()),
                                Cell.of(stint.goodOrder() ? "in good order" : "")))
                        .toList()));
        return lines.text();
    }
}
