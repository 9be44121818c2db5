package setwright.benchmarks.kernel;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.stat.descriptive.rank.Percentile;
import setwright.core.numerics.Robust;

/** Regression with Huber's weights: the library solves each of the weighted rounds. */
final class HuberRegression implements Kernel {
    private static final int COUNT = 20_000;
    private static final int WIDTH = 4;
    private static final double HUBER_K = 1.345;
    private static final double SETTLED = 1.0e-9;
    private static final int MOST_ROUNDS = 100;

    private final double[][] predictors = new double[WIDTH][];
    private final double[] y = new double[COUNT];

    HuberRegression() {
        Random random = new Random(5L);
        predictors[0] = new double[COUNT];
        Arrays.fill(predictors[0], 1.0);
        for (int j = 1; j < WIDTH; j++) {
            predictors[j] = Signal.draw(COUNT, 50L + j);
        }
        for (int i = 0; i < COUNT; i++) {
            double wild = random.nextInt(20) == 0 ? 30.0 : 1.0;
            y[i] = 2.0
                    + predictors[1][i]
                    - 0.5 * predictors[2][i]
                    + 0.1 * predictors[3][i]
                    + wild * random.nextGaussian();
        }
    }

    @Override
    public String words() {
        return "Huber's regression on 4 predictors, 20,000 samples";
    }

    @Override
    public List<double[]> inputs() {
        return List.of(y, predictors[0], predictors[1], predictors[2], predictors[3]);
    }

    @Override
    public double[] ours() {
        Robust.Fit fit = Robust.regress(predictors, y);
        double[] coefficients = new double[WIDTH];
        Arrays.setAll(coefficients, fit::coefficient);
        return coefficients;
    }

    /** Rounds end when the scale has settled to this share; the last ones still move coefficients by about as much. */
    @Override
    public double tolerance() {
        return 1.0e-7;
    }

    @Override
    public Optional<Library> hipparchus() {
        return Optional.of(
                Kernel.library("Hipparchus, QRDecomposition of all rows in each round, Percentile", this::rounds));
    }

    private double[] rounds() {
        double[] weights = new double[COUNT];
        Arrays.fill(weights, 1.0);
        double[] coefficients = solve(weights);
        double scale = 0.0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] sizes = new double[COUNT];
            for (int i = 0; i < COUNT; i++) {
                double left = y[i];
                for (int j = 0; j < WIDTH; j++) {
                    left -= coefficients[j] * predictors[j][i];
                }
                sizes[i] = Math.abs(left);
            }
            double now = Robust.MAD_TO_SIGMA * new Percentile().evaluate(sizes, 50.0);
            if (Math.abs(now - scale) < SETTLED * now) {
                break;
            }
            scale = now;
            for (int i = 0; i < COUNT; i++) {
                weights[i] = sizes[i] <= HUBER_K * scale ? 1.0 : HUBER_K * scale / sizes[i];
            }
            coefficients = solve(weights);
        }
        return coefficients;
    }

    private double[] solve(double[] weights) {
        double[][] rows = new double[COUNT][WIDTH];
        double[] right = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double root = Math.sqrt(weights[i]);
            right[i] = root * y[i];
            for (int j = 0; j < WIDTH; j++) {
                rows[i][j] = root * predictors[j][i];
            }
        }
        return new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }
}
