package setwright.core.simulation.driver;

import java.util.ArrayList;
import java.util.List;
import setwright.core.circuit.Corner;
import setwright.core.circuit.ReferenceLine;

/**
 * Cuts a lap into the bends that a driver learns one by one, kinks as well. Unlike the corners of a circuit they leave nothing out: each
 * begins where the one before ends.
 */
final class BendSplitter {
    /** A bend counts from this share of the cornering that the lap asks for at most. */
    private static final double WORTH = 0.2;
    /** Two peaks are two bends when the demand falls below this share of the smaller one between them. */
    private static final double VALLEY = 0.6;

    private static final double TURNING = 0.25;

    private final ReferenceLine line;
    private final double[] demand;
    private final int nodes;

    private BendSplitter(ReferenceLine line, double[] speedMps) {
        this.line = line;
        this.nodes = line.nodeCount();
        this.demand = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            demand[i] = line.curvature(i) * speedMps[i] * speedMps[i];
        }
    }

    /**
     * Returns the bends in driving order; empty for a line that hardly bends.
     *
     * @param speedMps  about how quickly each node is driven, m/s
     */
    static List<Corner> split(ReferenceLine line, double[] speedMps) {
        return new BendSplitter(line, speedMps).bends();
    }

    private List<Corner> bends() {
        List<Integer> peaks = peaks();
        List<Corner> bends = new ArrayList<>();
        int count = peaks.size();
        double step = line.stepM();
        for (int k = 0; k < count; k++) {
            int peak = peaks.get(k);
            int before = k == 0 ? peaks.get(count - 1) - nodes : peaks.get(k - 1);
            int after = k == count - 1 ? peaks.get(0) + nodes : peaks.get(k + 1);
            int start = count == 1 ? peak - nodes / 2 : exitEnd(before, peak);
            int end = count == 1 ? peak + nodes / 2 : exitEnd(peak, after);
            int turnIn = edge(peak, start, -1);
            int turnOut = edge(peak, end, 1);
            bends.add(new Corner(
                    k + 1,
                    demand[peak] > 0.0 ? Corner.Direction.LEFT : Corner.Direction.RIGHT,
                    start * step,
                    turnIn * step,
                    peak * step,
                    turnOut * step,
                    end * step));
        }
        return bends;
    }

    /** Peaks of demand in node order, each in [0, nodes). */
    private List<Integer> peaks() {
        double most = 0.0;
        for (double value : demand) {
            most = Math.max(most, Math.abs(value));
        }
        double worth = WORTH * most;
        List<Integer> peaks = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            double here = Math.abs(demand[i]);
            if (here < worth || here <= size(i - 1) || here < size(i + 1)) {
                continue;
            }
            int last = peaks.size() - 1;
            if (last >= 0 && !parted(peaks.get(last), i)) {
                if (here > Math.abs(demand[peaks.get(last)])) {
                    peaks.set(last, i);
                }
            } else {
                peaks.add(i);
            }
        }
        return peaks;
    }

    private boolean parted(int one, int other) {
        double smaller = Math.min(Math.abs(demand[one]), Math.abs(demand[other]));
        if (demand[one] * demand[other] < 0.0) {
            return true;
        }
        for (int i = one; i <= other; i++) {
            if (Math.abs(demand[i]) < VALLEY * smaller) {
                return true;
            }
        }
        return false;
    }

    /** The node between two peaks where the way out of one becomes the way into the next: a third of the way after it is straight. */
    private int exitEnd(int peak, int next) {
        int straight = edge(Math.floorMod(peak, nodes), Math.floorMod(peak, nodes) + next - peak, 1)
                - Math.floorMod(peak, nodes)
                + peak;
        int lowest = straight;
        for (int i = peak; i < next; i++) {
            lowest = size(i) < size(lowest) ? i : lowest;
        }
        return Math.max(peak, Math.min(next, straight + (Math.max(lowest, straight) - straight) / 3));
    }

    /** The last node, from a peak on, that still turns its way. */
    private int edge(int peak, int limit, int direction) {
        double least = TURNING * Math.abs(demand[Math.floorMod(peak, nodes)]);
        int i = peak;
        while (i != limit && size(i + direction) >= least && sameSide(i + direction, peak)) {
            i += direction;
        }
        return i;
    }

    private boolean sameSide(int one, int other) {
        return demand[Math.floorMod(one, nodes)] * demand[Math.floorMod(other, nodes)] > 0.0;
    }

    private double size(int node) {
        return Math.abs(demand[Math.floorMod(node, nodes)]);
    }
}
