package setwright.app.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.app.evidence.BalanceTable;
import setwright.app.evidence.BalanceTable.Cell;
import setwright.app.evidence.BalanceTable.Row;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;

/**
 * The lap unrolled: one cell per corner as wide as the time spent in it, cut into phases.
 *
 * @param cells  in driving order
 */
public record RibbonView(List<Place> cells) {
    /** Yardsticks that fill half the height. */
    private static final double FULL = 4.0;

    /**
     * A corner on the ribbon.
     *
     * @param corner   number
     * @param width    relative width
     * @param label    everything the cell shows, in words
     * @param facts    the corner in one line, for the status line
     * @param steady   whether the car is judged there
     * @param phases   in driving order
     */
    public record Place(int corner, String width, String label, String facts, boolean steady, List<PhaseBar> phases) {}

    /**
     * A phase on the ribbon: a bar up for understeer, down for oversteer.
     *
     * @param phase   in words
     * @param deg     the imbalance in deg; null where none is shown
     * @param fullDeg that fills half the height
     * @param width   relative width
     * @param css     style classes of its colour
     * @param up      height above the middle, per cent
     * @param down    depth below it, per cent
     * @param sign    of the imbalance; empty when neutral or weak
     * @param notch   whether the hands did something unusual there in most laps
     * @param letsGo  style class of an axle that lets go there in most laps; empty when none does
     */
    public record PhaseBar(
            String phase,
            @Nullable String deg,
            String fullDeg,
            String width,
            String css,
            int up,
            int down,
            String sign,
            boolean notch,
            String letsGo) {}

    static RibbonView of(BalanceTable table, CornerFacts facts) {
        return new RibbonView(
                table.rows().stream().map(row -> cell(row, table, facts)).toList());
    }

    private static Place cell(Row row, BalanceTable table, CornerFacts lines) {
        List<PhaseBar> bars = Arrays.stream(Phase.values())
                .flatMap(phase -> row.cell(phase).stream())
                .map(cell -> bar(cell, row, table.yardstickRad()))
                .toList();
        String facts = lines.line(row);
        return new Place(
                row.corner().number(),
                weight(row.timeS()),
                "Corner " + row.corner().number() + ": " + facts,
                facts,
                row.repeatable(),
                bars);
    }

    private static PhaseBar bar(Cell cell, Row row, double yardstickRad) {
        Shade shade = Shade.of(cell, yardstickRad);
        double median = cell.excess().median();
        int height = (int) Math.round(100.0 * Math.min(1.0, Math.abs(median) / (FULL * yardstickRad)));
        boolean show = row.repeatable() && Double.isFinite(median);
        return new PhaseBar(
                cell.phase().words(),
                show ? degrees(median) : null,
                degrees(FULL * yardstickRad),
                weight(cell.timeS()),
                shade.css(),
                show && median > 0.0 ? height : 0,
                show && median < 0.0 ? height : 0,
                shade.pale() || !show ? "" : shade.sign(),
                show && 2 * handsIn(row, cell.phase()) > row.passes().size(),
                show ? letsGo(row, cell.phase()) : "");
    }

    private static String letsGo(Row row, Phase phase) {
        return switch (CornerFacts.letsGo(row, phase)) {
            case -1 -> "rear";
            case 1 -> "front";
            default -> "";
        };
    }

    private static long handsIn(Row row, Phase phase) {
        return row.passes().stream().filter(pass -> unusual(pass, phase)).count();
    }

    private static boolean unusual(CornerPass pass, Phase phase) {
        return pass.hands().stream().anyMatch(event -> event.phase() == phase);
    }

    private static String degrees(double rad) {
        return String.format(Locale.ROOT, "%.4f", Math.toDegrees(rad));
    }

    private static String weight(double timeS) {
        return String.format(Locale.ROOT, "%.2f", Double.isFinite(timeS) ? Math.max(timeS, 0.05) : 0.05);
    }
}
