package setwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.engine.Engine;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Proposal;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** What a recording must have before anything can be judged. */
final class Requirements {
    /** The shortest kart tracks take longer (common practice). */
    private static final double SHORTEST_LAP_S = 5.0;

    private static final int FEWEST_CHANGES = 3;

    private Requirements() {}

    static void check(Table table, Proposal proposal) {
        ChannelMap map = proposal.map();
        require(table, proposal, "a speed", List.of(Quantity.SPEED));
        require(table, proposal, "a steering angle", List.of(Quantity.STEERING_WHEEL_ANGLE, Quantity.ROAD_WHEEL_ANGLE));
        require(
                table,
                proposal,
                "a yaw rate, a lateral acceleration or a position",
                List.of(Quantity.YAW_RATE, Quantity.LATERAL_ACCELERATION, Quantity.LATITUDE, Quantity.POSITION_X));
        for (MapEntry entry : map.entries().values()) {
            table.column(entry.column()).flatMap(TableColumn::firstBad).ifPresent(cell -> {
                throw InputProblem.in(table.file())
                        .row(cell.row())
                        .column(entry.column())
                        .value(cell.text())
                        .expected("a number or an empty cell")
                        .advice("Correct or empty the cell.")
                        .problem();
            });
        }
    }

    /** Every channel is held whole, and some more while it is worked on. */
    static void checkSize(Table table, ChannelMap map) {
        int columns = map.entries().size();
        if (table.rowCount() > Engine.mostRows(2 * columns)) {
            throw InputProblem.in(table.file())
                    .expected("a recording that fits into memory")
                    .found(table.rowCount() + " rows of " + columns + " columns that are used")
                    .advice(
                            "Read it into the logbook (setwright add), which cuts it into stints, or give the program more"
                                    + " memory (-Xmx).")
                    .problem();
        }
    }

    /** A lap counter that runs faster than any lap counts something else. */
    static void checkLapCounter(Table table, ChannelMap map, double[] timesS) {
        Optional<MapEntry> entry = map.entry(Quantity.LAP_NUMBER);
        Optional<TableColumn> column = entry.flatMap(known -> table.column(known.column()));
        if (column.isEmpty()) {
            return;
        }
        List<Integer> changes = new ArrayList<>();
        for (int i = 1; i < column.get().size(); i++) {
            double step = column.get().get(i) - column.get().get(i - 1);
            if (Math.abs(step) >= 0.5) {
                changes.add(i);
            }
        }
        if (changes.size() < FEWEST_CHANGES) {
            return;
        }
        double[] between = new double[changes.size() - 1];
        for (int i = 0; i < between.length; i++) {
            between[i] = timesS[changes.get(i + 1)] - timesS[changes.get(i)];
        }
        double usual = Robust.median(between);
        if (usual < SHORTEST_LAP_S) {
            throw InputProblem.in(table.file())
                    .row(table.lineOf(changes.get(0)))
                    .column(column.get().header())
                    .value(String.valueOf(column.get().get(changes.get(0))))
                    .expected("a lap number")
                    .found(String.format(Locale.ROOT, "one that changes every %.2g s; no lap is that short", usual))
                    .advice("Name the right column as lap number in the channel map, or leave it out.")
                    .problem();
        }
    }

    private static void require(Table table, Proposal proposal, String what, List<Quantity> any) {
        if (any.stream().noneMatch(proposal.map()::has)) {
            String columns = table.columns().stream().map(TableColumn::header).collect(Collectors.joining(", "));
            String remarks = String.join(" ", proposal.remarks());
            throw InputProblem.in(table.file())
                    .expected("a column with " + what)
                    .found("none that could be told among: " + columns)
                    .advice("Export it as well, or name its column in a channel map. " + remarks)
                    .problem();
        }
    }
}
