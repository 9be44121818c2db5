package setwright.core.simulation.driver;

import java.util.Arrays;

/**
 * How much of the car a driver has learnt to use in each corner, going in, in the middle and going out; mutable. He goes on until
 * the axle that slides first is where he wants it.
 */
final class CornerTrust {
    private static final double GAIN = 0.5;
    private static final double MOST_UP = 1.01;
    private static final double MOST_DOWN = 0.94;
    private static final double LEAST = 0.5;
    private static final double MOST = 1.08;

    private final double[] entry;
    private final double[] middle;
    private final double[] exit;

    CornerTrust(int corners, double first) {
        entry = new double[corners];
        middle = new double[corners];
        exit = new double[corners];
        Arrays.fill(entry, first);
        Arrays.fill(middle, first * first);
        Arrays.fill(exit, first);
    }

    double entry(int corner) {
        return entry[corner];
    }

    double middle(int corner) {
        return middle[corner];
    }

    double exit(int corner) {
        return exit[corner];
    }

    /**
     * Learns from a lap.
     *
     * @param corner    index
     * @param entryUse  greatest share of either axle's force on the way in; 0 when nothing was asked
     * @param midUse    in the middle
     * @param exitUse   on the way out
     * @param target    wanted
     */
    void learn(int corner, double entryUse, double midUse, double exitUse, double target) {
        entry[corner] = moved(entry[corner], entryUse, target);
        middle[corner] = moved(middle[corner], midUse, target);
        exit[corner] = moved(exit[corner], exitUse, target);
    }

    /** Takes a corner back after the car was lost there. */
    void frighten(int corner) {
        entry[corner] *= 0.93;
        middle[corner] *= 0.93;
        exit[corner] *= 0.9;
    }

    private static double moved(double trust, double use, double target) {
        if (use <= 0.0) {
            return trust;
        }
        double factor = Math.max(MOST_DOWN, Math.min(1.0 + GAIN * (target - use), MOST_UP));
        return Math.max(LEAST, Math.min(trust * factor, MOST));
    }
}
