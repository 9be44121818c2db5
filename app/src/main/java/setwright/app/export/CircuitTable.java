package setwright.app.export;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.app.export.CircuitTable.Node;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;

/** The circuit as the laps showed it: one row per node of the reference line. */
final class CircuitTable implements Table<Node> {
    /** A node of the reference line. */
    record Node(Circuit circuit, int index) {
        double stationM() {
            return index * circuit.line().stepM();
        }

        /** Returns the number of the corner between whose turn-in and turn-out it lies, also over the start line; empty on a straight. */
        OptionalInt corner() {
            return circuit.corners().stream()
                    .filter(this::within)
                    .mapToInt(Corner::number)
                    .findFirst();
        }

        private boolean within(Corner corner) {
            double length = circuit.line().lengthM();
            return IntStream.rangeClosed(-1, 1)
                    .mapToDouble(lap -> stationM() + lap * length)
                    .anyMatch(station -> station >= corner.turnInM() && station <= corner.turnOutM());
        }
    }

    @Override
    public String name() {
        return "circuit";
    }

    @Override
    public String words() {
        return "One row per node of the reference line, from the start line round the lap.";
    }

    @Override
    public Source source() {
        return Source.RECORDING;
    }

    @Override
    public List<Column<Node>> columns() {
        return List.of(
                Column.number("station", Measure.DISTANCE, "along the line from the start line", Node::stationM),
                Column.number(
                        "x",
                        Measure.DISTANCE,
                        "in a right-handed plane",
                        node -> node.circuit().line().x(node.index())),
                Column.number(
                        "y",
                        Measure.DISTANCE,
                        "in a right-handed plane",
                        node -> node.circuit().line().y(node.index())),
                Column.number(
                        "heading",
                        Measure.ANGLE,
                        "direction of travel, growing to the left",
                        node -> node.circuit().line().heading(node.index())),
                Column.number(
                        "curvature",
                        Measure.CURVATURE,
                        "left positive",
                        node -> node.circuit().line().curvature(node.index())),
                Column.wholeIfAny(
                        "corner", "number of the corner from turn-in to turn-out; empty on a straight", Node::corner));
    }

    @Override
    public Stream<Node> rows(Material material) {
        Circuit circuit = material.laps().get(0).answer().diagnosis().stint().circuit();
        return IntStream.range(0, circuit.line().nodeCount()).mapToObj(i -> new Node(circuit, i));
    }
}
