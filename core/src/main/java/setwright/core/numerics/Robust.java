package setwright.core.numerics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Statistics that a few wild samples cannot spoil. NaN is left out everywhere.
 *
 * <p><b>Sources:</b> P. J. Huber and E. M. Ronchetti, <i>Robust Statistics</i>, 2nd ed. 2009 (M-estimate of regression, tuning
 * constant 1.345 for 95 % efficiency; 1.4826 makes the median absolute deviation consistent for a normal distribution); P. K.
 * Sen, J. Am. Stat. Assoc. 63 (1968) 1379 (median of pairwise slopes).
 */
public final class Robust {
    /** {@code 1 / Phi^-1(3/4)}. */
    public static final double MAD_TO_SIGMA = 1.4826;

    /** Standard error of a median against that of a mean, normal distribution: the root of half pi. */
    private static final double MEDIAN_TO_MEAN = Math.sqrt(0.5 * Math.PI);

    private static final double QN_TO_SIGMA = 2.2219;
    private static final double[] QN_SMALL = {
        Double.NaN, Double.NaN, 0.399, 0.994, 0.512, 0.844, 0.611, 0.857, 0.669, 0.872
    };

    private static final double HUBER_K = 1.345;
    private static final int MAX_ITERATIONS = 100;
    /** With pivots above it normal equations of predictors of norm 1 lose at most eight of sixteen digits. */
    private static final double WELL_CONDITIONED = 1.0e-8;
    /** Pairwise slopes grow with the square; beyond this many points an even selection is used. */
    private static final int MOST_POINTS_FOR_PAIRS = 1000;

    private Robust() {}

    /** Result of a regression. */
    public static final class Fit {
        private final double[] coefficients;
        private final double[] standardErrors;
        private final double scale;
        private final int count;

        private Fit(double[] coefficients, double[] standardErrors, double scale, int count) {
            this.coefficients = coefficients;
            this.standardErrors = standardErrors;
            this.scale = scale;
            this.count = count;
        }

        /** Returns the coefficient of predictor {@code index}, counted from 0. */
        public double coefficient(int index) {
            return coefficients[index];
        }

        /**
         * Returns the standard error of a coefficient for independent residuals; multiply by the root of the samples per
         * independent sample when they are not.
         */
        public double standardError(int index) {
            return standardErrors[index];
        }

        /** Returns the standard deviation of the residuals, from their median absolute deviation. */
        public double scale() {
            return scale;
        }

        /** Returns the weight that a row with such a residual has, 0..1. */
        public double weight(double residual) {
            return huber(residual, scale);
        }

        /** Returns the number of rows used. */
        public int count() {
            return count;
        }
    }

    /** A straight line {@code y = intercept + slope x}. */
    public record Line(double intercept, double slope) {}

    /** Returns the median; NaN when there is no finite sample. */
    public static double median(double[] values) {
        return quantile(values, 0.5);
    }

    /** Returns 1.4826 times the median absolute deviation from the median: the standard deviation, when normal. */
    public static double scaledMad(double[] values) {
        double centre = median(values);
        double[] deviations = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            deviations[i] = Math.abs(values[i] - centre);
        }
        return MAD_TO_SIGMA * median(deviations);
    }

    /** Returns the standard error of the median of normal values; NaN when there is no finite sample. */
    public static double medianError(double[] values) {
        return MEDIAN_TO_MEAN * scaledMad(values) / Math.sqrt(finite(values).length);
    }

    /**
     * Returns the scale estimate Qn: as robust as the median absolute deviation, and twice as efficient on the few normal
     * values that laps are (82 % against 37 %).
     *
     * <p><b>Source:</b> P. J. Rousseeuw and C. Croux, Journal of the American Statistical Association 88 (1993) 1273-1283;
     * factors for small samples from memory, checked by simulation in the tests.
     *
     * @return the standard deviation, when normal; NaN with fewer than two finite values
     */
    public static double qn(double[] values) {
        double[] x = finite(values);
        int n = x.length;
        if (n < 2) {
            return Double.NaN;
        }
        double[] apart = new double[n * (n - 1) / 2];
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                apart[at++] = Math.abs(x[i] - x[j]);
            }
        }
        Arrays.sort(apart);
        int half = n / 2 + 1;
        return QN_TO_SIGMA * smallSample(n) * apart[half * (half - 1) / 2 - 1];
    }

    private static double smallSample(int n) {
        if (n < QN_SMALL.length) {
            return QN_SMALL[n];
        }
        return n % 2 == 1 ? n / (n + 1.4) : n / (n + 3.8);
    }

    /**
     * Returns a quantile by linear interpolation between order statistics (type 7 of Hyndman and Fan, 1996).
     *
     * @param share  0 for the least, 1 for the greatest
     */
    public static double quantile(double[] values, double share) {
        double[] work = finite(values);
        if (work.length == 0) {
            return Double.NaN;
        }
        double position = share * (work.length - 1);
        int below = (int) Math.floor(position);
        // selecting takes time in proportion to the samples, and leaves all greater ones behind the one selected
        double low = select(work, below);
        if (below == work.length - 1) {
            return low;
        }
        double high = work[below + 1];
        for (int i = below + 2; i < work.length; i++) {
            high = Math.min(high, work[i]);
        }
        return low + (position - below) * (high - low);
    }

    /**
     * Puts the value with so many smaller or equal ones in its place, none greater before it and none smaller behind it, and returns
     * it (C. A. R. Hoare, "Find", Communications of the ACM 4, 1961; value from memory), with the middle of three as pivot.
     */
    private static double select(double[] values, int rank) {
        int from = 0;
        int to = values.length - 1;
        while (from < to) {
            double a = values[from];
            double b = values[(from + to) >>> 1];
            double c = values[to];
            double pivot = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
            int i = from;
            int j = to;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (pivot < values[j]) {
                    j--;
                }
                if (i <= j) {
                    double held = values[i];
                    values[i++] = values[j];
                    values[j--] = held;
                }
            }
            if (rank <= j) {
                to = j;
            } else if (rank >= i) {
                from = i;
            } else {
                return values[rank];
            }
        }
        return values[rank];
    }

    /** Returns a copy without NaN and infinities. */
    public static double[] finite(double[] values) {
        int count = 0;
        for (double value : values) {
            count += Double.isFinite(value) ? 1 : 0;
        }
        double[] finite = new double[count];
        int at = 0;
        for (double value : values) {
            if (Double.isFinite(value)) {
                finite[at++] = value;
            }
        }
        return finite;
    }

    /**
     * Fits a line by the median of the slopes between pairs of points (Theil-Sen); stands up to 29 % wild points.
     *
     * @return NaN for both when fewer than two points differ in {@code x}
     */
    public static Line theilSen(double[] x, double[] y) {
        int[] use = finiteRows(new double[][] {x}, y);
        int stride = Math.max(1, (use.length + MOST_POINTS_FOR_PAIRS - 1) / MOST_POINTS_FOR_PAIRS);
        int count = (use.length + stride - 1) / stride;
        double[] slopes = new double[count * (count - 1) / 2];
        int at = 0;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                double dx = x[use[i * stride]] - x[use[j * stride]];
                slopes[at++] = dx == 0.0 ? Double.NaN : (y[use[i * stride]] - y[use[j * stride]]) / dx;
            }
        }
        double slope = median(slopes);
        double[] rest = new double[use.length];
        for (int i = 0; i < use.length; i++) {
            rest[i] = y[use[i]] - slope * x[use[i]];
        }
        return new Line(median(rest), slope);
    }

    /**
     * Fits {@code y = sum of coefficient_j predictor_j} by iteratively re-weighted least squares with Huber's weights.
     *
     * @param predictors  one array per predictor, all as long as {@code y}; give an array of ones for an intercept
     * @param y           rows with NaN in {@code y} or in a predictor are left out
     * @throws IllegalArgumentException when fewer rows than predictors are left, or the predictors do not differ
     */
    public static Fit regress(double[][] predictors, double[] y) {
        int[] use = finiteRows(predictors, y);
        int width = predictors.length;
        if (use.length <= width) {
            throw new IllegalArgumentException(
                    "a regression on " + width + " predictors needs more than " + use.length + " samples");
        }
        double[] norms = norms(predictors, use);
        double[] weights = new double[use.length];
        Arrays.fill(weights, 1.0);
        double[] coefficients = weighted(predictors, y, use, weights, norms);
        double[] sizes = new double[use.length];
        double scale = 0.0;
        for (int iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
            residualSizes(predictors, y, use, coefficients, sizes);
            double newScale = MAD_TO_SIGMA * median(sizes);
            for (int i = 0; i < use.length; i++) {
                weights[i] = huber(sizes[i], newScale);
            }
            if (newScale == 0.0 || Math.abs(newScale - scale) < 1.0e-9 * newScale) {
                scale = newScale;
                break;
            }
            scale = newScale;
            coefficients = weighted(predictors, y, use, weights, norms);
        }
        double[] errors = standardErrors(predictors, y, use, weights, norms, scale);
        return new Fit(coefficients, errors, scale, use.length);
    }

    private static double huber(double residual, double scale) {
        double size = Math.abs(residual);
        return size <= HUBER_K * scale ? 1.0 : HUBER_K * scale / size;
    }

    private static int[] finiteRows(double[][] predictors, double[] y) {
        int[] rows = new int[y.length];
        int count = 0;
        for (int i = 0; i < y.length; i++) {
            boolean good = Double.isFinite(y[i]);
            for (double[] predictor : predictors) {
                good = good && Double.isFinite(predictor[i]);
            }
            if (good) {
                rows[count++] = i;
            }
        }
        return Arrays.copyOf(rows, count);
    }

    private static void residualSizes(
            double[][] predictors, double[] y, int[] use, double[] coefficients, double[] sizes) {
        for (int i = 0; i < use.length; i++) {
            int row = use[i];
            double sum = y[row];
            for (int j = 0; j < coefficients.length; j++) {
                sum -= coefficients[j] * predictors[j][row];
            }
            sizes[i] = Math.abs(sum);
        }
    }

    /** Column norms, so that predictors in unlike units are equally well conditioned. */
    private static double[] norms(double[][] predictors, int[] use) {
        double[] norms = new double[predictors.length];
        for (int j = 0; j < norms.length; j++) {
            double sum = 0.0;
            for (int row : use) {
                sum += predictors[j][row] * predictors[j][row];
            }
            norms[j] = sum > 0.0 ? Math.sqrt(sum) : 1.0;
        }
        return norms;
    }

    /**
     * The weighted normal equations of predictors of norm 1: the matrix row by row, then the right side. One pass over the
     * samples, nothing kept of them.
     */
    private static double[][] normal(double[][] predictors, double[] y, int[] use, double[] weights, double[] norms) {
        int width = predictors.length;
        double[][] sums = new double[width + 1][width];
        double[] scaled = new double[width];
        for (int i = 0; i < use.length; i++) {
            int row = use[i];
            double right = y[row];
            for (int j = 0; j < width; j++) {
                scaled[j] = predictors[j][row] / norms[j];
                double weighted = weights[i] * scaled[j];
                sums[width][j] += weighted * right;
                for (int k = 0; k <= j; k++) {
                    sums[j][k] += weighted * scaled[k];
                }
            }
        }
        for (int j = 0; j < width; j++) {
            for (int k = 0; k < j; k++) {
                sums[k][j] = sums[j][k];
            }
        }
        return sums;
    }

    private static double[] weighted(double[][] predictors, double[] y, int[] use, double[] weights, double[] norms) {
        int width = predictors.length;
        double[][] sums = normal(predictors, y, use, weights, norms);
        RealMatrix matrix = new Array2DRowRealMatrix(Arrays.copyOf(sums, width));
        QRDecomposition small = new QRDecomposition(matrix, WELL_CONDITIONED);
        double[] solution = small.getSolver().isNonSingular()
                ? small.getSolver()
                        .solve(new ArrayRealVector(sums[width], false))
                        .toArray()
                : orthogonal(predictors, y, use, weights, norms);
        for (int j = 0; j < solution.length; j++) {
            solution[j] /= norms[j];
        }
        return solution;
    }

    /** Predictors that hardly differ: without squaring their condition, on all rows. */
    private static double[] orthogonal(double[][] predictors, double[] y, int[] use, double[] weights, double[] norms) {
        double[] right = new double[use.length];
        double[][] rows = new double[use.length][predictors.length];
        for (int i = 0; i < use.length; i++) {
            double root = Math.sqrt(weights[i]);
            right[i] = root * y[use[i]];
            for (int j = 0; j < predictors.length; j++) {
                rows[i][j] = root * predictors[j][use[i]] / norms[j];
            }
        }
        DecompositionSolver solver = new QRDecomposition(new Array2DRowRealMatrix(rows, false), 1.0e-10).getSolver();
        if (!solver.isNonSingular()) {
            throw new IllegalArgumentException("the predictors of a regression do not differ from each other");
        }
        return solver.solve(new ArrayRealVector(right, false)).toArray();
    }

    private static double[] standardErrors(
            double[][] predictors, double[] y, int[] use, double[] weights, double[] norms, double scale) {
        double[][] sums = normal(predictors, y, use, weights, norms);
        RealMatrix covariance = new SingularValueDecomposition(
                        new Array2DRowRealMatrix(Arrays.copyOf(sums, predictors.length)))
                .getSolver()
                .getInverse();
        double[] errors = new double[predictors.length];
        for (int j = 0; j < errors.length; j++) {
            errors[j] = scale * Math.sqrt(Math.max(0.0, covariance.getEntry(j, j))) / norms[j];
        }
        return errors;
    }
}
