package setwright.core.numerics;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/*
 * Design note. Covariance of one group: restVariance (I + ratio J), whose inverse and determinant are known in closed form, so that sums
 * over groups are all that is needed. Both standard deviations are sought at once, as a prior on one of them allows no profiling.
 */

/**
 * Linear mixed model with one random intercept for each group, {@code y = X b + u_group + e}, by restricted maximum likelihood
 * (Patterson and Thompson, Biometrika 58, 1971); degrees of freedom of contrasts after Satterthwaite (Biometrics Bulletin 2, 1946), with the
 * expected information of the two variances.
 */
public final class MixedModel {
    private static final int MOST_LOOKS = 4000;
    private static final double EXACT = 1.0e-12;
    private static final int STARTS = 2;
    private static final double SMALLER = 0.1;

    private final double[][] rows;
    /** What ordinary least squares leave, so that large values lose no digits. */
    private final double[] values;

    private final RealVector ordinary;
    private final int[] groups;
    private final int groupCount;
    private final int[] sizes;
    private final Optional<Known> known;
    private final double[][] squares;
    private final double[] products;
    private final double square;
    private final double[][] groupRows;
    private final double[] groupValues;

    /**
     * What is known of the scatter between groups before these data are seen, worth so many groups.
     *
     * @param deviation  standard deviation, &gt; 0
     * @param freedom    degrees of freedom of that knowledge, &gt; 0
     */
    public record Known(double deviation, double freedom) {}

    private MixedModel(double[][] rows, double[] values, int[] groups, Optional<Known> known) {
        this.rows = rows;
        RealMatrix design = new Array2DRowRealMatrix(rows, false);
        RealVector observed = new ArrayRealVector(values, false);
        this.ordinary = new QRDecomposition(design).getSolver().solve(observed);
        this.values = observed.subtract(design.operate(ordinary)).toArray();
        this.groups = groups;
        this.groupCount = Arrays.stream(groups).max().orElse(-1) + 1;
        this.known = known;
        int columns = rows[0].length;
        this.sizes = new int[groupCount];
        this.squares = new double[columns][columns];
        this.products = new double[columns];
        this.groupRows = new double[groupCount][columns];
        this.groupValues = new double[groupCount];
        double sum = 0.0;
        for (int i = 0; i < this.values.length; i++) {
            double value = this.values[i];
            sum += value * value;
            sizes[groups[i]]++;
            groupValues[groups[i]] += value;
            for (int j = 0; j < columns; j++) {
                products[j] += rows[i][j] * value;
                groupRows[groups[i]][j] += rows[i][j];
                for (int k = 0; k < columns; k++) {
                    squares[j][k] += rows[i][j] * rows[i][k];
                }
            }
        }
        this.square = sum;
    }

    /**
     * Fits one.
     *
     * @param rows    predictors of each observation, linearly independent columns, fewer than observations
     * @param values  observed
     * @param groups  of each observation, numbered from 0
     * @param known   of the scatter between groups
     * @throws IllegalArgumentException when lengths differ or observations are too few
     */
    public static MixedFit fit(double[][] rows, double[] values, int[] groups, Optional<Known> known) {
        if (rows.length != values.length || groups.length != values.length) {
            throw new IllegalArgumentException("rows, values and groups differ in length");
        }
        if (values.length == 0 || values.length <= rows[0].length) {
            throw new IllegalArgumentException(values.length + " observations are too few for the predictors");
        }
        return new MixedModel(rows, values, groups, known).fit();
    }

    private MixedFit fit() {
        double scale = Math.max(deviation(), Double.MIN_NORMAL);
        double[] found = {0.5 * scale, Math.log(0.5 * scale)};
        double[] size = {0.4 * scale, 0.4};
        for (int again = 0; again < STARTS; again++) { // a simplex may fold up before it has arrived
            found = best(found, size);
            size = new double[] {SMALLER * size[0], SMALLER * size[1]};
        }
        double between = found[0] * found[0];
        double within = Math.exp(2.0 * found[1]);
        if (known.isEmpty() && criterion(0.0, within) <= criterion(between, within)) {
            between = 0.0;
        }
        Sums sums = new Sums(between / within);
        RealMatrix information = information(between, within, sums);
        return new MixedFit(
                ordinary.add(sums.coefficients),
                sums.inverse.scalarMultiply(within),
                between,
                within,
                criterion(between, within),
                sums,
                information);
    }

    private double[] best(double[] from, double[] size) {
        return new SimplexOptimizer(new SimpleValueChecker(EXACT, EXACT))
                .optimize(
                        new MaxEval(MOST_LOOKS),
                        new ObjectiveFunction(at -> criterion(at[0] * at[0], Math.exp(2.0 * at[1]))),
                        GoalType.MINIMIZE,
                        new InitialGuess(from),
                        new NelderMeadSimplex(size))
                .getPoint();
    }

    private double deviation() {
        double mean = Arrays.stream(values).average().orElse(0.0);
        return Math.sqrt(Arrays.stream(values)
                .map(y -> (y - mean) * (y - mean))
                .average()
                .orElse(0.0));
    }

    /** Minus twice the restricted log likelihood, and what is known of the groups' scatter. */
    private double criterion(double between, double within) {
        Sums sums = new Sums(between / within);
        int free = values.length - rows[0].length;
        double criterion = free * Math.log(2.0 * Math.PI * within)
                + sums.logDeterminant
                + sums.logDeterminantOfSquares
                + sums.rest / within;
        return known.map(prior -> criterion
                        + prior.freedom() * (Math.log(between) + prior.deviation() * prior.deviation() / between))
                .orElse(criterion);
    }

    /** Rounding leaves the two halves apart where a sum is nearly nothing. */
    private static void mirror(double[][] symmetric) {
        for (int j = 0; j < symmetric.length; j++) {
            for (int k = 0; k < j; k++) {
                symmetric[k][j] = symmetric[j][k];
            }
        }
    }

    /** Expected information of the variances between and within groups (Searle, Casella, McCulloch, Variance Components, 1992). */
    private RealMatrix information(double between, double within, Sums sums) {
        int n = values.length;
        RealMatrix inverse = new Array2DRowRealMatrix(n, n);
        RealMatrix together = new Array2DRowRealMatrix(n, n);
        double ratio = between / within;
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                if (groups[i] == groups[k]) {
                    together.setEntry(i, k, 1.0);
                    inverse.setEntry(i, k, -ratio / (1.0 + sizes[groups[i]] * ratio) / within);
                }
            }
            inverse.addToEntry(i, i, 1.0 / within);
        }
        RealMatrix design = new Array2DRowRealMatrix(rows);
        RealMatrix left = inverse.multiply(design);
        RealMatrix projection = inverse.subtract(
                left.multiply(sums.inverse.scalarMultiply(within)).multiply(left.transpose()));
        RealMatrix grouped = projection.multiply(together);
        RealMatrix information = new Array2DRowRealMatrix(2, 2);
        information.setEntry(
                0,
                0,
                0.5 * trace(grouped, grouped)
                        + known.map(prior -> 0.5 * prior.freedom() / (between * between))
                                .orElse(0.0));
        information.setEntry(0, 1, 0.5 * trace(grouped, projection));
        information.setEntry(1, 0, information.getEntry(0, 1));
        information.setEntry(1, 1, 0.5 * trace(projection, projection));
        return information;
    }

    private static double trace(RealMatrix one, RealMatrix other) {
        double sum = 0.0;
        for (int i = 0; i < one.getRowDimension(); i++) {
            for (int k = 0; k < one.getColumnDimension(); k++) {
                sum += one.getEntry(i, k) * other.getEntry(k, i);
            }
        }
        return sum;
    }

    /** Generalised least squares for one ratio of the variances, all in units of the variance within groups. */
    final class Sums {
        final RealMatrix inverse;
        final RealVector coefficients;
        /** Squares of what is left. */
        final double rest;

        final double logDeterminant;
        final double logDeterminantOfSquares;
        private final double ratio;

        Sums(double ratio) {
            this.ratio = ratio;
            int columns = products.length;
            double[][] weighted = new double[columns][];
            for (int j = 0; j < columns; j++) {
                weighted[j] = squares[j].clone();
            }
            double[] right = products.clone();
            double sum = square;
            double determinant = 0.0;
            for (int g = 0; g < groupCount; g++) {
                double weight = ratio / (1.0 + sizes[g] * ratio);
                determinant += Math.log1p(sizes[g] * ratio);
                sum -= weight * groupValues[g] * groupValues[g];
                for (int j = 0; j < columns; j++) {
                    right[j] -= weight * groupRows[g][j] * groupValues[g];
                    for (int k = 0; k < columns; k++) {
                        weighted[j][k] -= weight * groupRows[g][j] * groupRows[g][k];
                    }
                }
            }
            mirror(weighted);
            CholeskyDecomposition factors =
                    new CholeskyDecomposition(new Array2DRowRealMatrix(weighted, false), 1.0e-9, 1.0e-14);
            this.inverse = factors.getSolver().getInverse();
            this.coefficients = factors.getSolver().solve(new ArrayRealVector(right, false));
            this.rest = sum - coefficients.dotProduct(new ArrayRealVector(right, false));
            this.logDeterminant = determinant;
            this.logDeterminantOfSquares = Math.log(factors.getDeterminant());
        }

        /** Derivatives of a contrast's variance by the variances between and within groups. */
        double[] slopes(RealVector contrast) {
            RealVector weights = inverse.operate(contrast);
            double[] fitted = new double[values.length];
            double[] sums = new double[groupCount];
            for (int i = 0; i < fitted.length; i++) {
                fitted[i] = new ArrayRealVector(rows[i], false).dotProduct(weights);
                sums[groups[i]] += fitted[i];
            }
            double between = 0.0;
            for (int g = 0; g < groupCount; g++) {
                double whole = sums[g] / (1.0 + sizes[g] * ratio);
                between += whole * whole;
            }
            double within = 0.0;
            for (int i = 0; i < fitted.length; i++) {
                int g = groups[i];
                double own = fitted[i] - ratio / (1.0 + sizes[g] * ratio) * sums[g];
                within += own * own;
            }
            return new double[] {between, within};
        }
    }
}
