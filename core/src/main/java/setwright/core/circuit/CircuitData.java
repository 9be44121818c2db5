package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;

/**
 * A circuit as plain numbers and words, for writing to and reading from a text format.
 *
 * @param name             what people call it
 * @param anchor           {@code geographic}, {@code local plane} or {@code none}
 * @param originLatitude   of the plane's origin, rad; 0 unless geographic
 * @param originLongitude  of the plane's origin, rad; 0 unless geographic
 * @param stepM            distance between nodes of the line, m
 * @param x                first coordinate of each node, m
 * @param y                second coordinate of each node, m
 * @param heading          direction of travel at each node, rad
 * @param curvature        at each node, 1/m, left positive
 * @param corners          in driving order
 */
public record CircuitData(
        String name,
        String anchor,
        double originLatitude,
        double originLongitude,
        double stepM,
        List<Double> x,
        List<Double> y,
        List<Double> heading,
        List<Double> curvature,
        List<Corner> corners) {
    private static final String GEOGRAPHIC = "geographic";
    private static final String LOCAL_PLANE = "local plane";
    private static final String NONE = "none";

    public CircuitData {
        x = List.copyOf(x);
        y = List.copyOf(y);
        heading = List.copyOf(heading);
        curvature = List.copyOf(curvature);
        corners = List.copyOf(corners);
    }

    /** Returns a circuit's data. */
    public static CircuitData of(Circuit circuit) {
        ReferenceLine line = circuit.line();
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        List<Double> heading = new ArrayList<>();
        List<Double> curvature = new ArrayList<>();
        for (int i = 0; i < line.nodeCount(); i++) {
            x.add(line.x(i));
            y.add(line.y(i));
            heading.add(line.heading(i));
            curvature.add(line.curvature(i));
        }
        boolean onEarth = circuit.anchor() instanceof Circuit.Geographic;
        Circuit.Geographic origin =
                circuit.anchor() instanceof Circuit.Geographic given ? given : new Circuit.Geographic(0.0, 0.0);
        String anchor = circuit.anchor() instanceof Circuit.LocalPlane ? LOCAL_PLANE : onEarth ? GEOGRAPHIC : NONE;
        return new CircuitData(
                circuit.name(),
                anchor,
                origin.latitudeRad(),
                origin.longitudeRad(),
                line.stepM(),
                x,
                y,
                heading,
                curvature,
                circuit.corners());
    }

    /**
     * Returns the circuit.
     *
     * @throws IllegalArgumentException when the anchor is an unknown word or the lists differ in length
     */
    public Circuit circuit() {
        Circuit.Anchor tied = switch (anchor) {
            case GEOGRAPHIC -> new Circuit.Geographic(originLatitude, originLongitude);
            case LOCAL_PLANE -> new Circuit.LocalPlane();
            case NONE -> new Circuit.Unanchored();
            default ->
                throw new IllegalArgumentException("anchor of circuit '" + name + "' must be '" + GEOGRAPHIC + "', '"
                        + LOCAL_PLANE + "' or '" + NONE + "', got '" + anchor + "'");
        };
        ReferenceLine line = new ReferenceLine(stepM, array(x), array(y), array(heading), array(curvature));
        return new Circuit(name, line, corners, tied);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
