package setwright.core.numerics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Smoothing and derivatives by a least-squares polynomial in a window that slides over uniform samples.
 *
 * <p>Windows never reach across a gap: near an edge or a gap they are shortened on that side and the fit is read off where
 * the sample lies. With fewer samples than coefficients the degree is lowered; a lone sample has no derivative.
 *
 * <p><b>Source:</b> A. Savitzky and M. J. E. Golay, Analytical Chemistry 36 (1964) 1627-1639.
 */
public final class LocalPolynomial {
    private final int halfWidth;
    private final int degree;
    private final Map<Long, double[][]> weightsBySides = new ConcurrentHashMap<>();

    private LocalPolynomial(int halfWidth, int degree) {
        this.halfWidth = halfWidth;
        this.degree = degree;
    }

    /**
     * Makes a fit over {@code 2 halfWidth + 1} samples.
     *
     * @param halfWidth  samples on either side, at least 1
     * @param degree     of the polynomial, 1 to 5, at most {@code 2 halfWidth}
     */
    public static LocalPolynomial of(int halfWidth, int degree) {
        if (halfWidth < 1 || degree < 1 || degree > Math.min(5, 2 * halfWidth)) {
            throw new IllegalArgumentException(
                    "need half width >= 1 and degree 1..min(5, 2 half width), got " + halfWidth + " and " + degree);
        }
        return new LocalPolynomial(halfWidth, degree);
    }

    /**
     * Makes a quadratic fit whose window spans about this time.
     *
     * @param windowS  whole width, s; at least three samples are used
     * @param stepS    time between samples, s
     */
    public static LocalPolynomial quadraticOver(double windowS, double stepS) {
        return of(Math.max(1, (int) Math.round(0.5 * windowS / stepS)), 2);
    }

    /** Returns the fitted value at each sample; NaN stays NaN. */
    public double[] smooth(double[] samples) {
        return evaluate(samples, 0, 1.0);
    }

    /**
     * Returns the slope of the fit at each sample.
     *
     * @param samples  NaN in gaps
     * @param stepS    distance between samples, in the unit that the result is to be per
     */
    public double[] derivative(double[] samples, double stepS) {
        return evaluate(samples, 1, 1.0 / stepS);
    }

    private double[] evaluate(double[] samples, int order, double factor) {
        double[] out = new double[samples.length];
        double[] whole = weights(halfWidth, halfWidth)[order];
        int i = 0;
        while (i < samples.length) {
            if (Double.isNaN(samples[i])) {
                out[i++] = Double.NaN;
                continue;
            }
            int from = i;
            while (i < samples.length && !Double.isNaN(samples[i])) {
                i++;
            }
            for (int at = from; at < i; at++) {
                int left = Math.min(halfWidth, at - from);
                int right = Math.min(halfWidth, i - 1 - at);
                double[] weights = left + right == 2 * halfWidth ? whole : weights(left, right)[order];
                out[at] = weigh(samples, at - left, weights) * factor;
            }
        }
        return out;
    }

    private static double weigh(double[] samples, int first, double[] weights) {
        double sum = 0.0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * samples[first + j];
        }
        return sum;
    }

    /** Weights of value and of slope per sample for a window with so many samples on either side. */
    private double[][] weights(int left, int right) {
        return weightsBySides.computeIfAbsent(((long) left << 32) | right, key -> computeWeights(left, right));
    }

    private double[][] computeWeights(int left, int right) {
        int count = left + right + 1;
        int used = Math.min(degree, count - 1);
        if (used == 0) {
            return new double[][] {{1.0}, {Double.NaN}};
        }
        double scale = Math.max(left, right);
        double[][] powers = new double[count][used + 1];
        for (int row = 0; row < count; row++) {
            double x = (row - left) / scale;
            powers[row][0] = 1.0;
            for (int column = 1; column <= used; column++) {
                powers[row][column] = powers[row][column - 1] * x;
            }
        }
        RealMatrix inverse = new QRDecomposition(new Array2DRowRealMatrix(powers, false))
                .getSolver()
                .getInverse();
        double[] value = inverse.getRow(0);
        double[] slope = inverse.getRow(1);
        for (int j = 0; j < count; j++) {
            slope[j] /= scale;
        }
        return new double[][] {value, slope};
    }
}
