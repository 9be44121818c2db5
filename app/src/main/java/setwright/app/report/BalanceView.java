package setwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.app.plot.Markup;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.handling.Phase;
import setwright.core.judgement.TimeSince;

/**
 * What the balance link shows: the circuit coloured by balance and the table of corners and phases.
 *
 * @param link    the argument
 * @param map     the circuit
 * @param rows    in driving order
 * @param legend  what the colours mean
 * @param against what balances are held against, in words
 * @param timed   whether the rows say what a corner takes more than in the baseline
 * @param axles   grip curves of both axles, where known
 */
public record BalanceView(
        Story.Link link,
        CircuitMap map,
        List<CornerRow> rows,
        List<LegendItem> legend,
        String against,
        boolean timed,
        Optional<AxleView> axles) {

    /** One corner of the table; {@code phases} has one entry per phase, in driving order. */
    public record CornerRow(
            int corner,
            String place,
            String speed,
            boolean steady,
            int laps,
            List<PhaseCell> phases,
            Optional<TimeCell> time) {}

    /**
     * What a corner takes more than in the baseline, with the straight after it.
     *
     * @param value     signed, in s
     * @param css       style classes
     * @param label     all in words
     */
    public record TimeCell(String value, String css, String label) {}

    /**
     * One phase of one corner.
     *
     * @param value     signed, in deg
     * @param interval  in deg; empty when unknown
     * @param css       style classes
     * @param bar       the interval drawn; empty when unknown
     * @param slides    how often an axle let go; empty when hardly ever
     * @param label     all in words
     */
    public record PhaseCell(String value, String interval, String css, Markup bar, String slides, String label) {}

    /** One colour explained. */
    public record LegendItem(String css, String text) {}

    static BalanceView of(
            BalanceTable table, CircuitMap map, Optional<AxleView> axles, Story.Link link, Figures figures) {
        double limit = table.rows().stream()
                .flatMap(row -> row.cells().values().stream())
                .mapToDouble(cell -> Math.abs(cell.excess().median()))
                .filter(Double::isFinite)
                .max()
                .orElse(0.0);
        double span = Math.max(1.3 * limit, 2.0 * table.yardstickRad());
        return new BalanceView(
                link,
                map,
                table.rows().stream().map(row -> row(row, table, span, figures)).toList(),
                legend(table, figures),
                table.against(),
                !table.since().isEmpty(),
                axles);
    }

    private static CornerRow row(Row row, BalanceTable table, double span, Figures figures) {
        return new CornerRow(
                row.corner().number(),
                row.corner().direction().name().toLowerCase(Locale.ROOT) + ", "
                        + row.speedClass().words(),
                figures.speed(row.lowestSpeedMps()),
                row.repeatable(),
                row.passes().size(),
                Arrays.stream(Phase.values())
                        .map(phase -> cell(phase, row.cell(phase), row.repeatable(), table, span, figures))
                        .toList(),
                table.since(row).map(since -> time(since, figures)));
    }

    private static TimeCell time(TimeSince.Difference since, Figures figures) {
        String value = figures.signed(since.seconds(), 2);
        return new TimeCell(
                value,
                since.clear() ? "" : "unclear",
                "with the straight after it " + value + " s against the baseline, 95 % interval "
                        + figures.signed(since.lowS(), 2) + " to " + figures.signed(since.highS(), 2)
                        + (since.clear() ? "" : ", not clear of chance"));
    }

    private static PhaseCell cell(
            Phase phase, Optional<Cell> found, boolean judged, BalanceTable table, double span, Figures figures) {
        if (found.isEmpty() || !Double.isFinite(found.get().excess().median())) {
            return new PhaseCell("\u2013", "", "none", new Markup(""), "", phase.words() + ": does not occur");
        }
        Cell cell = found.get();
        Shade shade = judged ? Shade.of(cell, table.yardstickRad()) : new Shade(0, true);
        String value = figures.signed(Math.toDegrees(cell.excess().median()), 2);
        String interval = Double.isFinite(cell.excess().low())
                ? figures.signed(Math.toDegrees(cell.excess().low()), 2) + " to "
                        + figures.signed(Math.toDegrees(cell.excess().high()), 2)
                : "";
        String label = phase.words() + ": " + (shade.pale() ? "unclear, " : shade.words() + ", ") + value + " deg"
                + (interval.isEmpty() ? "" : ", 95 % interval " + interval) + ", "
                + cell.excess().count() + " laps";
        String slides = slides(cell);
        return new PhaseCell(
                value,
                interval,
                shade.css(),
                interval.isEmpty()
                        ? new Markup("")
                        : IntervalBar.of(
                                cell.excess().low(),
                                cell.excess().high(),
                                cell.excess().median(),
                                span),
                slides,
                label + (slides.isEmpty() ? "" : ", the " + slides + " laps"));
    }

    /** An axle that lets go now and then says little; every third lap is a habit. */
    private static String slides(Cell cell) {
        boolean rear = cell.rearSlides() >= cell.frontSlides();
        int count = Math.max(cell.rearSlides(), cell.frontSlides());
        return 3 * count >= cell.excess().count() && count > 0
                ? (rear ? "rear lets go " : "front lets go ") + count + "/"
                        + cell.excess().count()
                : "";
    }

    private static List<LegendItem> legend(BalanceTable table, Figures figures) {
        List<LegendItem> items = new ArrayList<>();
        for (int step = -3; step <= 3; step++) {
            String css = new Shade(step, false).css();
            if (step == 0) {
                items.add(new LegendItem(css, "even"));
            } else {
                String size = figures.number(Math.toDegrees(Shade.edgeRad(Math.abs(step), table.yardstickRad())), 2);
                items.add(new LegendItem(css, (step < 0 ? "\u2212" : "+") + size));
            }
        }
        return items;
    }
}
