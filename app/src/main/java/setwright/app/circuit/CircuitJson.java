package setwright.app.circuit;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;

/** The shape of a circuit file, version 1. Angles of the line in rad, of the place in deg; distances in m. */
record CircuitJson(int version, String name, AnchorJson anchor, LineJson line, List<CornerJson> corners) {
    static final int VERSION = 1;

    record AnchorJson(
            String kind,
            @JsonProperty("latitude_deg") double latitudeDeg,
            @JsonProperty("longitude_deg") double longitudeDeg) {}

    record LineJson(
            @JsonProperty("step_m") double stepM,
            @JsonProperty("x_m") List<Double> x,
            @JsonProperty("y_m") List<Double> y,
            @JsonProperty("heading_rad") List<Double> heading,
            @JsonProperty("curvature_per_m") List<Double> curvature) {}

    record CornerJson(
            int number,
            String direction,
            @JsonProperty("start_m") double startM,
            @JsonProperty("turn_in_m") double turnInM,
            @JsonProperty("apex_m") double apexM,
            @JsonProperty("turn_out_m") double turnOutM,
            @JsonProperty("end_m") double endM) {}

    static CircuitJson of(Circuit circuit) {
        ReferenceLine line = circuit.line();
        List<Integer> nodes = IntStream.range(0, line.nodeCount()).boxed().toList();
        return new CircuitJson(
                VERSION,
                circuit.name(),
                anchor(circuit.anchor()),
                new LineJson(
                        line.stepM(),
                        nodes.stream().map(line::x).toList(),
                        nodes.stream().map(line::y).toList(),
                        nodes.stream().map(line::heading).toList(),
                        nodes.stream().map(line::curvature).toList()),
                circuit.corners().stream()
                        .map(c -> new CornerJson(
                                c.number(),
                                c.direction().name().toLowerCase(Locale.ROOT),
                                c.startM(),
                                c.turnInM(),
                                c.apexM(),
                                c.turnOutM(),
                                c.endM()))
                        .toList());
    }

    private static AnchorJson anchor(Circuit.Anchor anchor) {
        if (anchor instanceof Circuit.Geographic place) {
            return new AnchorJson(
                    "geographic", Math.toDegrees(place.latitudeRad()), Math.toDegrees(place.longitudeRad()));
        }
        return new AnchorJson(anchor instanceof Circuit.LocalPlane ? "local plane" : "none", 0.0, 0.0);
    }

    /**
     * Returns the circuit.
     *
     * @throws IllegalArgumentException saying which value is wrong
     */
    Circuit circuit() {
        if (version != VERSION) {
            throw new IllegalArgumentException("version must be " + VERSION + ", found " + version);
        }
        if (corners.contains(null)) {
            throw new IllegalArgumentException("corners must not hold null");
        }
        return new Circuit(
                name,
                new ReferenceLine(
                        line.stepM(),
                        array("x_m", line.x()),
                        array("y_m", line.y()),
                        array("heading_rad", line.heading()),
                        array("curvature_per_m", line.curvature())),
                corners.stream().map(CircuitJson::corner).toList(),
                switch (anchor.kind()) {
                    case "geographic" ->
                        new Circuit.Geographic(
                                Math.toRadians(anchor.latitudeDeg()), Math.toRadians(anchor.longitudeDeg()));
                    case "local plane" -> new Circuit.LocalPlane();
                    case "none" -> new Circuit.Unanchored();
                    default ->
                        throw new IllegalArgumentException(
                                "anchor kind must be geographic, local plane or none, found " + anchor.kind());
                });
    }

    private static Corner corner(CornerJson c) {
        Corner.Direction direction = switch (c.direction()) {
            case "left" -> Corner.Direction.LEFT;
            case "right" -> Corner.Direction.RIGHT;
            default ->
                throw new IllegalArgumentException(
                        "direction of corner " + c.number() + " must be left or right, found " + c.direction());
        };
        return new Corner(c.number(), direction, c.startM(), c.turnInM(), c.apexM(), c.turnOutM(), c.endM());
    }

    private static double[] array(String name, List<Double> values) {
        if (values.contains(null)) {
            throw new IllegalArgumentException(name + " must hold finite numbers, found null");
        }
        double[] array = values.stream().mapToDouble(Double::doubleValue).toArray();
        for (int i = 0; i < array.length; i++) {
            if (!Double.isFinite(array[i])) {
                throw new IllegalArgumentException(name + " must hold finite numbers, found " + array[i] + " at " + i);
            }
        }
        return array;
    }
}
