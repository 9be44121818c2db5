package setwright.benchmarks.growth;

/**
 * The straight line closest to points, by least squares.
 *
 * @param start  at zero
 * @param slope  for one more
 * @param off    greatest distance of a point from it, of the point's value
 */
record StraightLine(double start, double slope, double off) {

    /** Fits one to two points or more. */
    static StraightLine through(double[] x, double[] y) {
        double meanX = 0.0;
        double meanY = 0.0;
        for (int i = 0; i < x.length; i++) {
            meanX += x[i] / x.length;
            meanY += y[i] / x.length;
        }
        double squares = 0.0;
        double products = 0.0;
        for (int i = 0; i < x.length; i++) {
            squares += (x[i] - meanX) * (x[i] - meanX);
            products += (x[i] - meanX) * (y[i] - meanY);
        }
        double slope = products / squares;
        double start = meanY - slope * meanX;
        double off = 0.0;
        for (int i = 0; i < x.length; i++) {
            off = Math.max(off, Math.abs(y[i] - start - slope * x[i]) / y[i]);
        }
        return new StraightLine(start, slope, off);
    }
}
