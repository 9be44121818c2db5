package setwright.core.numerics;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A closed curve in the plane, each coordinate a periodic spline of one common parameter. Immutable.
 *
 * @param x  first coordinate
 * @param y  second coordinate, of the same period
 */
public record PlanarCurve(PeriodicSpline x, PeriodicSpline y) {
    public PlanarCurve {
        if (x.period() != y.period()) {
            throw new IllegalArgumentException(
                    "coordinates must share a period, got " + x.period() + " and " + y.period());
        }
    }

    /**
     * Fits a curve to scattered, weighted points, see {@link PeriodicSpline#fit}.
     *
     * @param u  parameter of each point
     * @param x  first coordinate; a point is left out where a coordinate is NaN
     * @param y  second coordinate
     */
    public static PlanarCurve fit(
            double period, int knots, double[] u, double[] x, double[] y, double[] weight, double roughness) {
        List<PeriodicSpline> both = PeriodicSpline.fit(period, knots, u, new double[][] {x, y}, weight, roughness);
        return new PlanarCurve(both.get(0), both.get(1));
    }

    /**
     * Points at equal distances along a curve; the first is not repeated at the end.
     *
     * @param step       distance between points along the curve
     * @param parameter  of each point, growing from the start's
     * @param x          first coordinate
     * @param y          second coordinate
     * @param heading    direction of travel, rad, unwrapped
     * @param curvature  positive where it turns from x towards y, 1 per unit of length
     */
    @SuppressWarnings("ArrayRecordComponent") // plain arrays, as everywhere in this package
    public record Points(
            double step, double[] parameter, double[] x, double[] y, double[] heading, double[] curvature) {}

    /** Returns the direction of travel at a parameter, rad in (-π, π]. */
    public double heading(double u) {
        return Math.atan2(y.at(u, 1), x.at(u, 1));
    }

    /** Returns the curvature {@code (x'y'' - y'x'') / (x'² + y'²)^1.5} at a parameter. */
    public double curvature(double u) {
        double x1 = x.at(u, 1);
        double y1 = y.at(u, 1);
        double speed = Math.hypot(x1, y1);
        return (x1 * y.at(u, 2) - y1 * x.at(u, 2)) / (speed * speed * speed);
    }

    /**
     * Walks once round the curve.
     *
     * @param start     parameter of the first point
     * @param stepGoal  wanted distance between points; the nearest that divides the length is taken
     */
    public Points walk(double start, double stepGoal) {
        double period = x.period();
        int fine = Math.max(64, (int) Math.ceil(4.0 * roughLength(period) / stepGoal));
        double du = period / fine;
        double[] ends = new double[fine + 1];
        double[] middles = new double[fine];
        IntStream.range(0, fine).parallel().forEach(i -> {
            ends[i] = speed(start + i * du);
            middles[i] = speed(start + (i + 0.5) * du);
        });
        ends[fine] = speed(start + fine * du);
        double[] along = new double[fine + 1];
        for (int i = 0; i < fine; i++) {
            along[i + 1] = along[i] + du * (ends[i] + 4.0 * middles[i] + ends[i + 1]) / 6.0;
        }
        int count = Math.max(8, (int) Math.round(along[fine] / stepGoal));
        double step = along[fine] / count;
        Points points = new Points(
                step, new double[count], new double[count], new double[count], new double[count], new double[count]);
        int at = 0;
        for (int i = 0; i < count; i++) {
            double target = i * step;
            while (along[at + 1] < target) {
                at++;
            }
            points.parameter[i] = start + du * (at + (target - along[at]) / (along[at + 1] - along[at]));
        }
        IntStream.range(0, count).parallel().forEach(i -> {
            double u = points.parameter[i];
            points.x[i] = x.at(u, 0);
            points.y[i] = y.at(u, 0);
            points.curvature[i] = curvature(u);
            points.heading[i] = heading(u);
        });
        for (int i = 1; i < count; i++) {
            points.heading[i] = nearest(points.heading[i], points.heading[i - 1]);
        }
        return points;
    }

    private double speed(double u) {
        return Math.hypot(x.at(u, 1), y.at(u, 1));
    }

    private double roughLength(double period) {
        int chords = 256;
        double sum = 0.0;
        for (int i = 0; i < chords; i++) {
            sum += speed(i * period / chords) * period / chords;
        }
        return sum;
    }

    private static double nearest(double angle, double reference) {
        return angle - 2.0 * Math.PI * Math.rint((angle - reference) / (2.0 * Math.PI));
    }
}
