package setwright.app.example;

import java.util.random.RandomGenerator;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;

/** How the invented car is driven round: one speed profile, shifted a little in each lap and corner. */
final class ExampleDriving {
    private static final double LATERAL_MPS2 = 14.0;
    private static final double BRAKING_MPS2 = 10.0;
    private static final double POWER_MPS2 = 6.5;
    private static final double TOP_MPS = 72.0;

    /** The corner where the braking point is nowhere the same. */
    static final int UNSTEADY_CORNER = 6;

    final Circuit circuit;
    final double[] speed;
    final double[] forward;
    /** By lap and corner, m: how much later than usual. */
    final double[][] shift;

    ExampleDriving(Circuit circuit, int laps, RandomGenerator random) {
        this.circuit = circuit;
        this.speed = profile(circuit.line());
        this.forward = new double[speed.length];
        double step = circuit.line().stepM();
        for (int i = 0; i < speed.length; i++) {
            double ahead = speed[(i + 2) % speed.length];
            double behind = speed[Math.floorMod(i - 2, speed.length)];
            forward[i] = speed[i] * (ahead - behind) / (4.0 * step);
        }
        this.shift = new double[laps][circuit.corners().size()];
        for (double[] lap : shift) {
            for (int c = 0; c < lap.length; c++) {
                lap[c] = (c + 1 == UNSTEADY_CORNER ? 6.0 : 1.3) * random.nextGaussian();
            }
        }
    }

    private static double[] profile(ReferenceLine line) {
        int n = line.nodeCount();
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            v[i] = Math.min(TOP_MPS, Math.sqrt(LATERAL_MPS2 / Math.max(1e-4, Math.abs(line.curvature(i)))));
        }
        for (int i = 2 * n; i > 0; i--) { // twice round, so that the lap closes
            int at = Math.floorMod(i, n);
            int before = Math.floorMod(i - 1, n);
            v[before] = Math.min(v[before], Math.sqrt(v[at] * v[at] + 2.0 * BRAKING_MPS2 * line.stepM()));
        }
        for (int i = 0; i < 2 * n; i++) {
            int at = i % n;
            int next = (i + 1) % n;
            double push = POWER_MPS2 * (1.0 - v[at] * v[at] / (80.0 * 80.0));
            v[next] = Math.min(v[next], Math.sqrt(v[at] * v[at] + 2.0 * push * line.stepM()));
        }
        return v;
    }

    /** How much later than usual the driver does things there, m. */
    double shiftAt(int lap, double station) {
        double sum = 0.0;
        double weights = 1e-6;
        for (Corner corner : circuit.corners()) {
            double away = Math.abs(station - corner.apexM());
            double weight = Math.exp(-away * away / (2.0 * 60.0 * 60.0));
            sum += weight * shift[lap][corner.number() - 1];
            weights += weight;
        }
        return sum / weights;
    }

    double speedAt(double station) {
        return at(speed, station);
    }

    double forwardAt(double station) {
        return at(forward, station);
    }

    double brakeAt(double station) {
        return Math.max(0.0, Math.min(1.0, (-forwardAt(station) - 0.8) / (BRAKING_MPS2 - 0.8)));
    }

    double throttleAt(double station) {
        double asked = forwardAt(station) / (POWER_MPS2 * (1.0 - Math.pow(speedAt(station) / 80.0, 2)));
        return Math.max(0.0, Math.min(1.0, asked + (speedAt(station) > 70.0 ? 1.0 : 0.0)));
    }

    private double at(double[] values, double station) {
        double position = circuit.line().wrap(station) / circuit.line().stepM();
        int node = (int) position;
        double share = position - node;
        return values[node % values.length] * (1.0 - share) + values[(node + 1) % values.length] * share;
    }
}
