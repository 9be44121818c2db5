package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import setwright.app.story.Story;
import setwright.app.story.SweepStory;
import setwright.app.sweep.SweepAnswer;
import setwright.app.text.TextTable.Cell;
import setwright.app.text.TextTable.Column;
import setwright.app.text.TextTable.Style;
import setwright.app.units.Figures;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweptLap;

/** Laps over setup items as lines of text. */
public final class SweepText {
    private final SetupSweep sweep;
    private final Figures figures;
    private final SweepStory story;
    private final TextLines lines;

    private SweepText(SweepAnswer answer, Figures figures, Terminal terminal) {
        this.sweep = answer.sweep();
        this.figures = figures;
        this.story = new SweepStory(answer, figures);
        this.lines = new TextLines(terminal);
    }

    /** Returns the text, ending with a line break. */
    public static String write(SweepAnswer answer, Figures figures, Terminal terminal) {
        SweepText text = new SweepText(answer, figures, terminal);
        text.write();
        return text.lines.text();
    }

    private void write() {
        lines.wide(story.headline());
        lines.faint(String.join(", ", story.facts()));
        lines.gap();
        if (sweep.items().size() == 1) {
            lines.wide(table());
            lines.faint(
                    "Difference: against the present setup, - is quicker. Balance in deg at the limit: + understeer, - oversteer."
                            + " Limits: share of the lap time for which front axle, rear axle and engine limit. * is the present setup.");
        } else {
            lines.wide(map());
            lines.faint("Lap time in s against the present setup ("
                    + figures.lapTime(sweep.present().timeS())
                    + "), - is quicker. Down: " + heading(0) + ". Across: " + heading(1)
                    + ". * is the present setup.");
        }
        lines.faint(story.corners());
        if (!story.remarks().isEmpty()) {
            lines.gap();
            lines.paragraphs("So", story.remarks());
        }
        lines.gap();
        lines.paragraphs("Unseen", story.limits());
        lines.gap();
        lines.faint(Story.CAUTION);
    }

    private TextTable table() {
        List<List<Cell>> rows = new ArrayList<>();
        for (SweptLap lap : sweep.laps()) {
            boolean present = lap.values().equals(sweep.present().values());
            Style style = present ? Style.FAINT : Style.PLAIN;
            rows.add(List.of(
                    new Cell(figures.plain(lap.values().get(0)) + (present ? " *" : "  "), style),
                    new Cell(figures.lapTime(lap.timeS()), style),
                    new Cell(figures.signed(lap.timeS() - sweep.present().timeS(), 3), style),
                    new Cell(balance(lap, sweep.slowCorners()), style),
                    new Cell(balance(lap, sweep.fastCorners()), style),
                    new Cell(speed(lap.lowestMps(sweep.slowCorners())), style),
                    new Cell(speed(lap.lowestMps(sweep.fastCorners())), style),
                    new Cell(number(lap.highestMps()), style),
                    new Cell(
                            share(lap.frontShare()) + "/" + share(lap.rearShare()) + "/" + share(lap.engineShare()),
                            style)));
        }
        String speed = figures.units().speedUnit();
        return new TextTable(
                List.of(
                        new Column(heading(0), true, 9),
                        new Column("lap", true, 7),
                        new Column("difference s", true, 9),
                        new Column("balance slow", true, 8),
                        new Column("balance fast", true, 8),
                        new Column("slow " + speed, true, 4),
                        new Column("fast " + speed, true, 4),
                        new Column("top", true, 3),
                        new Column("limits %", true, 2)),
                rows);
    }

    private TextTable map() {
        List<Column> columns = new ArrayList<>(List.of(new Column("", true, 99)));
        List<Double> across = sweep.items().get(1).values();
        for (int j = 0; j < across.size(); j++) {
            columns.add(new Column(figures.plain(across.get(j)), true, Math.max(1, 50 - j)));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < sweep.items().get(0).values().size(); i++) {
            List<Cell> row = new ArrayList<>();
            row.add(new Cell(figures.plain(sweep.items().get(0).values().get(i)), Style.FAINT));
            for (int j = 0; j < across.size(); j++) {
                SweptLap lap = sweep.at(i, j);
                boolean present = lap.values().equals(sweep.present().values());
                row.add(new Cell(
                        figures.signed(lap.timeS() - sweep.present().timeS(), 2) + (present ? "*" : ""), Style.PLAIN));
            }
            rows.add(row);
        }
        return new TextTable(columns, rows);
    }

    private String heading(int item) {
        String unit = sweep.items().get(item).item().unit();
        return sweep.items().get(item).item().name() + (unit.isEmpty() ? "" : " " + unit);
    }

    private String balance(SweptLap lap, Set<Integer> corners) {
        OptionalDouble balance = lap.balanceRad(corners);
        return balance.isPresent() ? figures.signed(Math.toDegrees(balance.getAsDouble()), 2) : "";
    }

    private String speed(OptionalDouble mps) {
        return mps.isPresent() ? number(mps.getAsDouble()) : "";
    }

    private String number(double mps) {
        return figures.number(figures.units().speed(mps), 1);
    }

    private static String share(double share) {
        return String.valueOf(Math.round(100.0 * share));
    }
}
