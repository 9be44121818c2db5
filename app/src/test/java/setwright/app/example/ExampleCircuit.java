package setwright.app.example;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Corner.Direction;
import setwright.core.circuit.ReferenceLine;

/** An invented circuit of thirteen corners: straights joined by arcs. */
final class ExampleCircuit {
    static final double STEP_M = 2.0;
    private static final double[][] POINTS = {
        {650, 0},
        {720, 160},
        {880, 200},
        {900, 380},
        {740, 430},
        {640, 330},
        {520, 400},
        {560, 560},
        {380, 620},
        {300, 480},
        {140, 520},
        {20, 380},
        {-80, 0}
    };
    private static final double[] RADII = {45, 60, 35, 40, 60, 30, 35, 40, 45, 30, 60, 180, 38};
    private static final double[] START = {200, 0};

    private final List<double[]> path = new ArrayList<>();
    private final List<double[]> turns = new ArrayList<>();
    private double station;

    private ExampleCircuit() {}

    static Circuit build(String name) {
        ExampleCircuit builder = new ExampleCircuit();
        builder.lay();
        ReferenceLine line = builder.line();
        return new Circuit(name, line, builder.corners(line.lengthM()), new Circuit.LocalPlane());
    }

    /** Radius of a corner's arc, m. */
    static double radiusM(int corner) {
        return RADII[corner - 1];
    }

    private void lay() {
        double[] from = START;
        for (int i = 0; i < POINTS.length; i++) {
            double[] at = POINTS[i];
            double[] next = POINTS[(i + 1) % POINTS.length];
            double in = Math.atan2(
                    at[1] - (i == 0 ? START[1] : POINTS[i - 1][1]), at[0] - (i == 0 ? START[0] : POINTS[i - 1][0]));
            double out = Math.atan2(next[1] - at[1], next[0] - at[0]);
            double turn = Math.IEEEremainder(out - in, 2.0 * Math.PI);
            double tangent = RADII[i] * Math.tan(Math.abs(turn) / 2.0);
            double[] entry = {at[0] - tangent * Math.cos(in), at[1] - tangent * Math.sin(in)};
            straight(from, entry, in);
            double turnIn = station;
            arc(entry, in, turn, RADII[i]);
            turns.add(new double[] {turnIn, station, Math.signum(turn)});
            from = new double[] {at[0] + tangent * Math.cos(out), at[1] + tangent * Math.sin(out)};
        }
        straight(from, START, 0.0);
    }

    private void straight(double[] from, double[] to, double heading) {
        double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
        for (double d = 0.0; d < length; d += 0.25) {
            path.add(new double[] {station + d, from[0] + d * Math.cos(heading), from[1] + d * Math.sin(heading), 0.0});
        }
        station += length;
    }

    private void arc(double[] from, double heading, double turn, double radius) {
        double length = Math.abs(turn) * radius;
        double side = Math.signum(turn);
        double cx = from[0] - side * radius * Math.sin(heading);
        double cy = from[1] + side * radius * Math.cos(heading);
        for (double d = 0.0; d < length; d += 0.25) {
            double h = heading + side * d / radius;
            path.add(new double[] {
                station + d, cx + side * radius * Math.sin(h), cy - side * radius * Math.cos(h), side / radius
            });
        }
        station += length;
    }

    private ReferenceLine line() {
        int nodes = (int) Math.round(station / STEP_M);
        double step = station / nodes;
        double[] x = new double[nodes];
        double[] y = new double[nodes];
        double[] curvature = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            double[] point = path.get((int) ((long) i * path.size() / nodes));
            x[i] = point[1];
            y[i] = point[2];
            for (int k = -5; k <= 5; k++) {
                int node = Math.floorMod(i + k, nodes);
                curvature[i] += path.get((int) ((long) node * path.size() / nodes))[3] / 11.0;
            }
        }
        double[] heading = new double[nodes];
        for (int i = 1; i < nodes; i++) {
            heading[i] = heading[i - 1] + 0.5 * step * (curvature[i] + curvature[i - 1]);
        }
        return new ReferenceLine(step, x, y, heading, curvature);
    }

    private List<Corner> corners(double length) {
        List<Corner> corners = new ArrayList<>();
        double free = 0.0;
        for (int i = 0; i < turns.size(); i++) {
            double[] turn = turns.get(i);
            double next = i + 1 < turns.size() ? turns.get(i + 1)[0] : length;
            double start = Math.max(free, turn[0] - 130.0);
            double end = Math.min(turn[1] + 0.45 * (next - turn[1]), turn[1] + 70.0);
            corners.add(new Corner(
                    i + 1,
                    turn[2] > 0.0 ? Direction.LEFT : Direction.RIGHT,
                    start,
                    turn[0],
                    0.5 * (turn[0] + turn[1]),
                    turn[1],
                    end));
            free = end;
        }
        return corners;
    }
}
