package setwright.core.circuit;

/**
 * Where each sample lies.
 *
 * @param station  m along the line in [0, length); NaN where unknown
 * @param offset   m to the left of the line; NaN where there is no position
 */
@SuppressWarnings("ArrayRecordComponent") // scratch arrays inside this package, never handed out
record Placement(double[] station, double[] offset) {
    /** Speed, m/s, against station for one stretch of samples, at equal steps round the line; NaN where it did not pass. */
    double[] speedAt(Motion motion, int from, int to, int nodes, double stepM) {
        double[] speed = new double[nodes];
        java.util.Arrays.fill(speed, Double.NaN);
        double length = nodes * stepM;
        for (int i = from + 1; i < to; i++) {
            double a = station[i - 1];
            double b = station[i];
            if (b < a - 0.5 * length) {
                b += length;
            }
            if (!(b > a) || b - a > 0.25 * length || !motion.known(i) || !motion.known(i - 1)) {
                continue;
            }
            for (int node = (int) Math.ceil(a / stepM); node * stepM < b; node++) {
                double share = (node * stepM - a) / (b - a);
                speed[node % nodes] = motion.speed(i - 1) * (1.0 - share) + motion.speed(i) * share;
            }
        }
        return speed;
    }
}
