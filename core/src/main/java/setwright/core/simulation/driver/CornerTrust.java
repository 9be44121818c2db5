package setwright.core.simulation.driver;

import java.util.Arrays;

/**
 * How much of the car a driver has learnt to use in each corner, going in, in the middle and going out; mutable. He goes on until
 * the axle that slides first is where he wants it.
 */
final class CornerTrust {
    private static final double GAIN = 0.7;
    private static final double MOST_UP = 1.035;
    private static final double MOST_DOWN = 0.94;
    private static final double LOST_SHARE = 0.985;
    private static final double TAKEN_BACK = 0.96;
    private static final double LEAST = 0.65;
    private static final double MOST = 1.0;

    private final double[] entry;
    private final double[] middle;
    private final double[] exit;
    private final double[] best;
    private final double[][] kept;
    /** A car that was lost at some trust is not trusted so far again: entry, middle, exit. */
    private final double[][] ceiling;

    CornerTrust(int corners, double first) {
        entry = new double[corners];
        middle = new double[corners];
        exit = new double[corners];
        best = new double[corners];
        kept = new double[3][corners];
        ceiling = new double[3][corners];
        for (double[] part : ceiling) {
            Arrays.fill(part, MOST);
        }
        Arrays.fill(best, Double.POSITIVE_INFINITY);
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
        entry[corner] = moved(entry[corner], entryUse, target, ceiling[0][corner]);
        middle[corner] = moved(middle[corner], midUse, target, ceiling[1][corner]);
        exit[corner] = moved(exit[corner], exitUse, target, ceiling[2][corner]);
    }

    /**
     * Keeps what was tried when it was the quickest so far.
     *
     * @param seconds  time from this corner's approach to the next
     */
    void keep(int corner, double seconds) {
        if (seconds < best[corner]) {
            best[corner] = seconds;
            kept[0][corner] = entry[corner];
            kept[1][corner] = middle[corner];
            kept[2][corner] = exit[corner];
        }
    }

    /** Goes back to the quickest that was tried in every corner; where none was timed, all stays. */
    void settle() {
        for (int corner = 0; corner < best.length; corner++) {
            if (Double.isFinite(best[corner])) {
                entry[corner] = kept[0][corner];
                middle[corner] = kept[1][corner];
                exit[corner] = kept[2][corner];
            }
        }
    }

    /** Takes a corner back after the car was lost there. */
    void frighten(int corner) {
        entry[corner] = taken(entry[corner], ceiling[0], corner);
        middle[corner] = taken(middle[corner], ceiling[1], corner);
        exit[corner] = taken(exit[corner], ceiling[2], corner);
        best[corner] = Double.POSITIVE_INFINITY;
    }

    private static double taken(double trust, double[] ceiling, int corner) {
        ceiling[corner] = Math.min(ceiling[corner], Math.max(LEAST, LOST_SHARE * trust));
        return Math.max(LEAST, TAKEN_BACK * trust);
    }

    private static double moved(double trust, double use, double target, double ceiling) {
        if (use <= 0.0) {
            return trust;
        }
        double factor = Math.max(MOST_DOWN, Math.min(1.0 + GAIN * (target - use), MOST_UP));
        return Math.max(LEAST, Math.min(trust * factor, ceiling));
    }
}
