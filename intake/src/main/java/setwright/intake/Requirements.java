package setwright.intake;

import java.util.List;
import java.util.stream.Collectors;
import setwright.core.recording.Quantity;
import setwright.intake.csv.Table;
import setwright.intake.csv.TableColumn;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Proposal;
import setwright.intake.problem.InputProblem;

/** What a recording must have before anything can be judged. */
final class Requirements {
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
