package setwright.core.technique;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/*
 * Design note. What drifts over a run (tyres, fuel, track) moves both driver and car, and would look like a lever. So the lap number is
 * regressed out. Least squares, not a robust fit: a slide shows on few of ten laps, and they are what it is about.
 */

/**
 * How the size of a problem goes with a lever over the passes of one corner, with the trend over the laps taken out.
 *
 * @param corner      number
 * @param passes      used
 * @param slope       size per unit of the lever
 * @param error       standard error of the slope, &gt; 0
 * @param freedom     degrees of freedom, at least 2
 * @param spread      standard deviation of the lever about its trend
 */
public record CornerSlope(int corner, int passes, double slope, double error, int freedom, double spread) {
    /** Three coefficients and two degrees of freedom. */
    static final int FEWEST_PASSES = 5;

    private static final double ROUNDING = 1.0e-12;

    /**
     * Fits one.
     *
     * @param laps    numbers
     * @param values  of the lever, NaN where unknown
     * @param sizes   of the problem, NaN where unknown
     * @return empty when fewer than five passes have both, or one of them does not vary
     */
    static Optional<CornerSlope> of(int corner, double[] laps, double[] values, double[] sizes) {
        int[] use = IntStream.range(0, laps.length)
                .filter(i -> Double.isFinite(values[i]) && Double.isFinite(sizes[i]))
                .toArray();
        if (use.length < FEWEST_PASSES) {
            return Optional.empty();
        }
        double[] lap = pick(laps, use);
        double[] x = residuals(lap, pick(values, use));
        double[] y = residuals(lap, pick(sizes, use));
        int freedom = use.length - 3;
        double xx = product(x, x);
        double slope = product(x, y) / xx;
        double rest = product(y, y) - slope * slope * xx;
        double error = Math.sqrt(Math.max(rest, 0.0) / freedom / xx);
        // what does not vary but for rounding
        double size = product(y, y);
        boolean varies =
                xx > ROUNDING * scale(values, use) && size > ROUNDING * scale(sizes, use) && rest > ROUNDING * size;
        return varies
                ? Optional.of(
                        new CornerSlope(corner, use.length, slope, error, freedom, Math.sqrt(xx / (use.length - 2))))
                : Optional.empty();
    }

    private static double scale(double[] values, int[] use) {
        double[] picked = pick(values, use);
        return Math.max(product(picked, picked), 1.0e-300);
    }

    private static double[] pick(double[] values, int[] use) {
        return Arrays.stream(use).mapToDouble(i -> values[i]).toArray();
    }

    private static double[] residuals(double[] laps, double[] values) {
        double[][] rows =
                Arrays.stream(laps).mapToObj(lap -> new double[] {lap}).toArray(double[][]::new);
        OLSMultipleLinearRegression line = new OLSMultipleLinearRegression();
        line.newSampleData(values, rows);
        return line.estimateResiduals();
    }

    private static double product(double[] one, double[] other) {
        double sum = 0.0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
