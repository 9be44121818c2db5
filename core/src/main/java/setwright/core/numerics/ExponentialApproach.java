package setwright.core.numerics;

import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.stat.regression.SimpleRegression;

/*
 * Design note. For a given time constant end and rise follow from a straight line of y over exp(-x / tau), so that only the constant is
 * searched for: over a grid first, as there may be more than one valley, then by Brent's method in the best one.
 */

/**
 * Least squares of {@code y = end - rise exp(-x / tau)}: a way that is done by the same share in each stretch.
 *
 * <p><b>Source:</b> asymptotic regression; the interval of tau holds all values whose squares an F-test at 5 % does not refuse
 * (profile likelihood; D. M. Bates and D. G. Watts, <i>Nonlinear Regression Analysis</i>, 1988, value from memory).
 *
 * @param end       that y comes to
 * @param rise      how much is missing at {@code x = 0}
 * @param tau       distance in x in which 63 % of what is missing is done
 * @param tauLow    lower end of its 95 % interval
 * @param tauHigh   upper end; infinite where the points do not settle it
 * @param deviation standard deviation of what is left
 * @param explains  whether it explains the points better than a constant does, at the 5 % level
 */
public record ExponentialApproach(
        double end, double rise, double tau, double tauLow, double tauHigh, double deviation, boolean explains) {
    /** Three are fitted, and one has to be left for the scatter. */
    public static final int FEWEST = 4;

    private static final int COEFFICIENTS = 3;
    private static final double LEVEL = 0.95;
    private static final int GRID = 200;
    /** Of the span of x: what is done quicker or slower looks like a step or a line. */
    private static final double SHORTEST = 0.01;

    private static final double LONGEST = 3.0;
    private static final int EVALUATIONS = 500;
    private static final double PRECISION = 1.0e-9;

    /**
     * Fits it.
     *
     * @param x  at least {@value #FEWEST} values that are not all alike
     * @throws IllegalArgumentException when there are fewer
     */
    public static ExponentialApproach fit(double[] x, double[] y) {
        if (x.length < FEWEST || x.length != y.length) {
            throw new IllegalArgumentException(
                    "an approach takes " + FEWEST + " points at least, got " + x.length + " and " + y.length);
        }
        double[] grid = grid(x);
        int best = 0;
        double[] squares = new double[grid.length];
        for (int i = 0; i < grid.length; i++) {
            squares[i] = line(x, y, grid[i]).getSumSquaredErrors();
            best = squares[i] < squares[best] ? i : best;
        }
        double tau = new BrentOptimizer(PRECISION, PRECISION * grid[0])
                .optimize(
                        new MaxEval(EVALUATIONS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(
                                value -> line(x, y, value).getSumSquaredErrors()),
                        new SearchInterval(
                                grid[Math.max(best - 1, 0)], grid[Math.min(best + 1, grid.length - 1)], grid[best]))
                .getPoint();
        SimpleRegression line = line(x, y, tau);
        double left = line.getSumSquaredErrors();
        int free = x.length - COEFFICIENTS;
        double most = left * (1.0 + new FDistribution(1.0, free).inverseCumulativeProbability(LEVEL) / free);
        double low = tau;
        double high = tau;
        for (int i = 0; i < grid.length; i++) {
            low = squares[i] <= most ? Math.min(low, grid[i]) : low;
            high = squares[i] <= most ? Math.max(high, grid[i]) : high;
        }
        double f = (line.getTotalSumSquares() - left) / (COEFFICIENTS - 1.0) / (left / free);
        boolean explains = !(f <= new FDistribution(COEFFICIENTS - 1.0, free).inverseCumulativeProbability(LEVEL));
        return new ExponentialApproach(
                line.getIntercept(),
                -line.getSlope(),
                tau,
                low,
                high >= grid[grid.length - 1] ? Double.POSITIVE_INFINITY : high,
                Math.sqrt(left / free),
                explains && line.getTotalSumSquares() > 0.0);
    }

    /** Returns what is missing at {@code x}. */
    public double missing(double x) {
        return rise * Math.exp(-x / tau);
    }

    private static double[] grid(double[] x) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : x) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double[] grid = new double[GRID];
        for (int i = 0; i < GRID; i++) {
            grid[i] = SHORTEST * (high - low) * Math.pow(LONGEST / SHORTEST, i / (GRID - 1.0));
        }
        return grid;
    }

    private static SimpleRegression line(double[] x, double[] y, double tau) {
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            line.addData(Math.exp(-x[i] / tau), y[i]);
        }
        return line;
    }
}
