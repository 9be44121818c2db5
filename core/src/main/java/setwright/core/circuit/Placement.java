package setwright.core.circuit;

import java.util.Arrays;

/**
 * Where each sample lies.
 *
 * @param station  m along the line in [0, length); NaN where unknown
 * @param offset   m to the left of the line; NaN where there is no position
 */
@SuppressWarnings("ArrayRecordComponent") // scratch arrays inside this package, never handed out
record Placement(double[] station, double[] offset) {
    /** Speed, m/s, at equal steps round the line, for one stretch of samples; NaN where it did not pass or was unknown. */
    double[] speedAt(Motion motion, int from, int to, int nodes, double stepM) {
        double[] speed = new double[to];
        for (int i = from; i < to; i++) {
            speed[i] = motion.known(i) ? motion.speed(i) : Double.NaN;
        }
        return atNodes(speed, from, to, nodes, stepM);
    }

    /** Any samples read at equal steps round the line, for one stretch of samples; NaN where it did not pass. */
    double[] atNodes(double[] samples, int from, int to, int nodes, double stepM) {
        double[] read = new double[nodes];
        Arrays.fill(read, Double.NaN);
        double length = nodes * stepM;
        for (int i = from + 1; i < to; i++) {
            double a = station[i - 1];
            double b = station[i];
            if (b < a - 0.5 * length) {
                b += length;
            }
            if (!(b > a) || b - a > 0.25 * length || Double.isNaN(samples[i] + samples[i - 1])) {
                continue;
            }
            for (int node = (int) Math.ceil(a / stepM); node * stepM < b; node++) {
                double share = (node * stepM - a) / (b - a);
                read[node % nodes] = samples[i - 1] * (1.0 - share) + samples[i] * share;
            }
        }
        return read;
    }
}
