package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import setwright.core.numerics.PeriodicSpline;

/** The periodic smoothing spline of which reference lines are made, read off at each knot. */
final class ReferenceLineSpline implements Kernel {
    private static final int COUNT = 20_000;
    private static final int KNOTS = 400;
    private static final double PERIOD = 94.0;
    private static final double ROUGHNESS = 1.0e-3;

    private final double[] u = new double[COUNT];
    private final double[] y = new double[COUNT];
    private final double[] weight = new double[COUNT];

    ReferenceLineSpline() {
        Random random = new Random(3L);
        for (int i = 0; i < COUNT; i++) {
            u[i] = PERIOD * random.nextDouble();
            double turn = 2.0 * Math.PI * u[i] / PERIOD;
            y[i] = 300.0 * Math.sin(turn) + 80.0 * Math.cos(3.0 * turn) + 0.3 * random.nextGaussian();
            weight[i] = 0.5 + random.nextDouble();
        }
    }

    @Override
    public String words() {
        return "Periodic smoothing spline, 400 knots through 20,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(u, y, weight, new double[] {PERIOD}, new double[] {KNOTS}, new double[] {ROUGHNESS});
    }

    @Override
    public double[] ours() {
        PeriodicSpline spline = PeriodicSpline.fit(PERIOD, KNOTS, u, y, weight, ROUGHNESS);
        double[] values = new double[KNOTS];
        for (int k = 0; k < KNOTS; k++) {
            values[k] = spline.at(k * PERIOD / KNOTS, 0);
        }
        return values;
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(
                Kernel.library("Hipparchus, CholeskyDecomposition of the full normal equations", this::dense));
    }

    /** The same least squares, with a matrix that does not know that it is a band. */
    private double[] dense() {
        double spacing = PERIOD / KNOTS;
        double[][] matrix = new double[KNOTS][KNOTS];
        double[] right = new double[KNOTS];
        for (int i = 0; i < COUNT; i++) {
            double place = u[i] / spacing;
            int first = Math.min(KNOTS - 1, (int) place);
            double[] basis = basis(place - first);
            for (int p = 0; p < 4; p++) {
                int row = (first + p) % KNOTS;
                right[row] += weight[i] * basis[p] * y[i];
                for (int q = 0; q < 4; q++) {
                    matrix[row][(first + q) % KNOTS] += weight[i] * basis[p] * basis[q];
                }
            }
        }
        double[] third = {-1.0, 3.0, -3.0, 1.0};
        double penalty = ROUGHNESS / Math.pow(spacing, 5.0);
        for (int i = 0; i < KNOTS; i++) {
            for (int p = 0; p < 4; p++) {
                for (int q = 0; q < 4; q++) {
                    matrix[(i + p) % KNOTS][(i + q) % KNOTS] += penalty * third[p] * third[q];
                }
            }
        }
        double[] coefficients = new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1.0e-9, 1.0e-14)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        double[] values = new double[KNOTS];
        double[] basis = basis(0.0);
        for (int k = 0; k < KNOTS; k++) {
            for (int p = 0; p < 4; p++) {
                values[k] += basis[p] * coefficients[(k + p) % KNOTS];
            }
        }
        return values;
    }

    /** Cubic B-splines on equal knots. */
    private static double[] basis(double t) {
        double s = 1.0 - t;
        return new double[] {
            s * s * s / 6.0,
            (3.0 * t * t * t - 6.0 * t * t + 4.0) / 6.0,
            (3.0 * s * s * s - 6.0 * s * s + 4.0) / 6.0,
            t * t * t / 6.0
        };
    }
}
