package setwright.core.numerics;

/**
 * A smooth curve through points that overshoots none of them: where the points rise, so does the curve. Immutable.
 *
 * <p>Piecewise cubic with slopes by weighted harmonic means (F. Fritsch and J. Butland, "A method for constructing local monotone
 * piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5(2), 1984). Beyond its ends it keeps the end values.
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    private MonotoneCubic(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        int last = x.length - 1;
        double[] secant = new double[last];
        for (int i = 0; i < last; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        slope = new double[x.length];
        for (int i = 1; i < last; i++) {
            if (secant[i - 1] * secant[i] > 0.0) {
                double before = x[i] - x[i - 1];
                double after = x[i + 1] - x[i];
                double w1 = 2.0 * after + before;
                double w2 = after + 2.0 * before;
                slope[i] = (w1 + w2) / (w1 / secant[i - 1] + w2 / secant[i]);
            }
        }
        slope[0] = last == 1 ? secant[0] : end(x[1] - x[0], x[2] - x[1], secant[0], secant[1]);
        slope[last] = last == 1
                ? secant[0]
                : end(x[last] - x[last - 1], x[last - 1] - x[last - 2], secant[last - 1], secant[last - 2]);
    }

    /**
     * Returns the curve through points.
     *
     * @param x  rising, two or more
     * @param y  as many, finite
     */
    public static MonotoneCubic through(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException(
                    "a curve needs two points or more, got " + x.length + " and " + y.length + " coordinates");
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new IllegalArgumentException("points of a curve must rise, got " + x[i - 1] + " and " + x[i]);
            }
        }
        return new MonotoneCubic(x, y);
    }

    /** Returns the value at a place. */
    public double at(double place) {
        int last = x.length - 1;
        if (!(place > x[0])) {
            return y[0];
        }
        if (place >= x[last]) {
            return y[last];
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= place) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double width = x[high] - x[low];
        double t = (place - x[low]) / width;
        double s = 1.0 - t;
        return y[low] * s * s * (1.0 + 2.0 * t)
                + y[high] * t * t * (3.0 - 2.0 * t)
                + width * s * t * (slope[low] * s - slope[high] * t);
    }

    /** Slope at an end by the parabola through three points, kept from overshooting. */
    private static double end(double near, double far, double first, double second) {
        double parabola = ((2.0 * near + far) * first - near * second) / (near + far);
        if (parabola * first <= 0.0) {
            return 0.0;
        }
        return first * second < 0.0 && Math.abs(parabola) > 3.0 * Math.abs(first) ? 3.0 * first : parabola;
    }
}
