package setwright.core.simulation.validation;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/** A closed cubic spline through points, over the length of their chords (textbook). */
final class PeriodicLine {
    private static final double FINE = 0.25;

    private final double[] u;
    private final double[][] value;
    private final double[][] second;

    PeriodicLine(double[] x, double[] y) {
        int n = x.length;
        u = new double[n + 1];
        for (int i = 0; i < n; i++) {
            u[i + 1] = u[i] + Math.hypot(x[(i + 1) % n] - x[i], y[(i + 1) % n] - y[i]);
        }
        double[][] matrix = new double[n][n];
        double[][] right = new double[2][n];
        value = new double[][] {x, y};
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            int after = (i + 1) % n;
            double h0 = u[before + 1] - u[before];
            double h1 = u[i + 1] - u[i];
            matrix[i][before] += h0;
            matrix[i][i] += 2.0 * (h0 + h1);
            matrix[i][after] += h1;
            for (int k = 0; k < 2; k++) {
                right[k][i] = 6.0 * ((value[k][after] - value[k][i]) / h1 - (value[k][i] - value[k][before]) / h0);
            }
        }
        LUDecomposition solver = new LUDecomposition(new Array2DRowRealMatrix(matrix, false));
        second = new double[2][];
        for (int k = 0; k < 2; k++) {
            second[k] = solver.getSolver()
                    .solve(new ArrayRealVector(right[k], false))
                    .toArray();
        }
    }

    /** Curvature at equal steps, and the step. */
    record Curvature(List<Double> values, double stepM, double lengthM) {
        double[] array() {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    Curvature curvature(double stepGoal) {
        int pieces = (int) (u[u.length - 1] / FINE);
        double du = u[u.length - 1] / pieces;
        double[] along = new double[pieces + 1];
        for (int i = 0; i < pieces; i++) {
            along[i + 1] = along[i] + du * speed((i + 0.5) * du);
        }
        double length = along[pieces];
        int nodes = (int) Math.round(length / stepGoal);
        List<Double> values = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < nodes; i++) {
            double target = i * length / nodes;
            while (along[at + 1] < target) {
                at++;
            }
            values.add(curvatureAt(du * (at + (target - along[at]) / (along[at + 1] - along[at]))));
        }
        return new Curvature(values, length / nodes, length);
    }

    private double speed(double at) {
        return Math.hypot(derivative(0, at, 1), derivative(1, at, 1));
    }

    private double curvatureAt(double at) {
        double x1 = derivative(0, at, 1);
        double y1 = derivative(1, at, 1);
        return (x1 * derivative(1, at, 2) - y1 * derivative(0, at, 2)) / Math.pow(Math.hypot(x1, y1), 3);
    }

    private double derivative(int k, double at, int order) {
        int n = value[k].length;
        int i = java.util.Arrays.binarySearch(u, at);
        i = Math.min(i >= 0 ? i : -i - 2, n - 1);
        double h = u[i + 1] - u[i];
        double t = (at - u[i]) / h;
        double m0 = second[k][i];
        double m1 = second[k][(i + 1) % n];
        if (order == 2) {
            return m0 + t * (m1 - m0);
        }
        return (value[k][(i + 1) % n] - value[k][i]) / h
                - h / 6.0 * (m0 * (3.0 * (1.0 - t) * (1.0 - t) - 1.0) - m1 * (3.0 * t * t - 1.0));
    }
}
