package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import setwright.core.numerics.PeriodicSpline;
import setwright.core.numerics.PlanarCurve;

/** The centre line of an invented circuit: curvature and place against distance, in fine equal steps. */
final class Shape {
    static final double STEP_M = 0.25;

    private final double[] curvature;
    private final double[] x;
    private final double[] y;
    private final double[] heading;

    private Shape(double[] curvature) {
        int n = curvature.length;
        this.curvature = curvature;
        this.x = new double[n + 1];
        this.y = new double[n + 1];
        this.heading = new double[n + 1];
        for (int i = 0; i < n; i++) {
            double turn = 0.5 * (curvature[i] + curvature[(i + 1) % n]) * STEP_M;
            x[i + 1] = x[i] + STEP_M * Math.cos(heading[i] + 0.5 * turn);
            y[i + 1] = y[i] + STEP_M * Math.sin(heading[i] + 0.5 * turn);
            heading[i + 1] = heading[i] + turn;
        }
    }

    /** Pieces of straight, arc and clothoid, in driving order. */
    static final class Pieces {
        private final List<double[]> pieces = new ArrayList<>();

        Pieces straight(double length) {
            pieces.add(new double[] {length, 0.0, 0.0});
            return this;
        }

        /** A bend of so many degrees (left positive) with clothoids of the given length into and out of the radius. */
        Pieces bend(double degrees, double radius, double clothoid) {
            double sign = Math.signum(degrees);
            double arc = Math.abs(Math.toRadians(degrees)) * radius - clothoid;
            if (arc < 0.0) {
                throw new IllegalArgumentException("clothoids turn more than the bend");
            }
            pieces.add(new double[] {clothoid, 0.0, sign / radius});
            pieces.add(new double[] {arc, sign / radius, sign / radius});
            pieces.add(new double[] {clothoid, sign / radius, 0.0});
            return this;
        }

        /** All pieces once more; a half that turns by 180 degrees then closes. */
        Pieces twice() {
            pieces.addAll(List.copyOf(pieces));
            return this;
        }

        Shape shape() {
            double total = pieces.stream().mapToDouble(p -> p[0]).sum();
            double[] curvature = new double[(int) Math.round(total / STEP_M)];
            double stretch = total / (curvature.length * STEP_M);
            int piece = 0;
            double begin = 0.0;
            for (int i = 0; i < curvature.length; i++) {
                double s = i * STEP_M * stretch;
                while (piece < pieces.size() - 1 && s >= begin + pieces.get(piece)[0]) {
                    begin += pieces.get(piece)[0];
                    piece++;
                }
                double[] p = pieces.get(piece);
                curvature[i] = p[0] > 0.0 ? p[1] + (p[2] - p[1]) * (s - begin) / p[0] : p[2];
            }
            return new Shape(curvature);
        }
    }

    /** A closed line through given points, by the periodic spline under test elsewhere. */
    static Shape through(PlanarCurve curve) {
        return new Shape(curve.walk(0.0, STEP_M).curvature());
    }

    /** A closed line without any symmetry: a circle with bays and capes. */
    static Shape island() {
        int count = 2000;
        double[] u = new double[count];
        double[] x = new double[count];
        double[] y = new double[count];
        double[] weight = new double[count];
        for (int i = 0; i < count; i++) {
            u[i] = 2.0 * Math.PI * i / count;
            double radius = 300.0
                    * (1.0
                            + 0.25 * Math.cos(2.0 * u[i])
                            + 0.12 * Math.sin(3.0 * u[i])
                            + 0.06 * Math.cos(5.0 * u[i] + 1.0));
            x[i] = radius * Math.cos(u[i]);
            y[i] = radius * Math.sin(u[i]);
            weight[i] = 1.0;
        }
        return through(new PlanarCurve(
                PeriodicSpline.fit(2.0 * Math.PI, 400, u, x, weight, 1e-9),
                PeriodicSpline.fit(2.0 * Math.PI, 400, u, y, weight, 1e-9)));
    }

    /** Two equal straights and two equal bends of 180 degrees. */
    static Shape oval(double straight, double radius) {
        return new Pieces().straight(straight).bend(180.0, radius, 40.0).twice().shape();
    }

    /** A point-symmetric circuit of ten corners: fast left, chicane, hairpin, medium right. */
    static Shape road() {
        return new Pieces()
                .straight(250.0)
                .bend(70.0, 110.0, 40.0)
                .straight(150.0)
                .bend(-60.0, 45.0, 25.0)
                .straight(20.0)
                .bend(80.0, 40.0, 25.0)
                .straight(200.0)
                .bend(165.0, 18.0, 15.0)
                .straight(150.0)
                .bend(-75.0, 70.0, 30.0)
                .straight(130.0)
                .twice()
                .shape();
    }

    /** Two loops joined by two straights that cross. */
    static Shape figureOfEight(double radius, double distance) {
        double straight = 2.0 * Math.sqrt(distance * distance - radius * radius);
        double degrees = 360.0 - Math.toDegrees(2.0 * Math.acos(radius / distance));
        Pieces pieces = new Pieces();
        pieces.straight(0.5 * straight).bend(degrees, radius, 0.0).straight(straight);
        pieces.bend(-degrees, radius, 0.0).straight(0.5 * straight);
        return pieces.shape();
    }

    /** The same line started further on. */
    Shape startedAt(double station) {
        int shift = (int) Math.round(station / STEP_M);
        double[] turned = new double[curvature.length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = curvature[(i + shift) % turned.length];
        }
        return new Shape(turned);
    }

    double length() {
        return curvature.length * STEP_M;
    }

    int nodes() {
        return curvature.length;
    }

    double curvature(int node) {
        return curvature[Math.floorMod(node, curvature.length)];
    }

    double closingGap() {
        return Math.hypot(x[x.length - 1], y[y.length - 1]);
    }

    /** First coordinate at a station with an offset to the left. */
    double x(double station, double offset) {
        return at(x, station) - offset * Math.sin(at(heading, station));
    }

    double y(double station, double offset) {
        return at(y, station) + offset * Math.cos(at(heading, station));
    }

    double heading(double station) {
        return at(heading, station);
    }

    double curvatureAt(double station) {
        double place = station / STEP_M;
        int node = (int) Math.floor(place);
        return curvature(node) + (place - node) * (curvature(node + 1) - curvature(node));
    }

    private double at(double[] values, double station) {
        double wrapped = station - length() * Math.floor(station / length());
        int node = Math.min((int) (wrapped / STEP_M), curvature.length - 1);
        double share = wrapped / STEP_M - node;
        return values[node] + share * (values[node + 1] - values[node]);
    }
}
