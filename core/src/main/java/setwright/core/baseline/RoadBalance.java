package setwright.core.baseline;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;
import setwright.core.recording.Channel;

/*
 * Design note. Two stints are compared place by place, not phase by phase: had each its own phases, the same car braked a little
 * longer would seem to have another balance. So the balance is laid out along the road, lap by lap, and any stretch can be asked for.
 * Angles keep the sign of the turn (left positive). A stretch of a left corner asks for what the car did while it cornered to the left
 * there, as a pass does: between two corners it may do either.
 */

/** A balance angle of one stint along the road, lap by lap. */
final class RoadBalance {
    private static final double NODE_M = 1.0;
    /** Samples farther apart have a gap between them; at 50 rows a second a car at 100 m/s leaves 2 m. */
    private static final double GAP_M = 12.0;

    private final double lengthM;
    private final List<Row> laps;
    private final Row all;

    /** Sums by node for cornering one way: the angle times its weight, and the weight (lateral acceleration times time, m/s). */
    private static final class Sums {
        private final double[] angle;
        private final double[] weight;

        private Sums(int nodes) {
            angle = new double[nodes];
            weight = new double[nodes];
        }

        private void add(int node, double signed, double w) {
            angle[node] += w * signed;
            weight[node] += w;
        }

        /** Mean from one place to another, in nodes; a node stands for the road half way to its neighbours. */
        private double mean(double from, double to) {
            double sum = 0.0;
            double total = 0.0;
            for (long k = Math.round(from); k - 0.5 < to; k++) {
                int node = Math.floorMod(k, angle.length);
                double share = Math.min(to, k + 0.5) - Math.max(from, k - 0.5);
                sum += share * angle[node];
                total += share * weight[node];
            }
            return sum / total;
        }
    }

    /** Sums of one lap, or of all. */
    private static final class Row {
        private final Sums left;
        private final Sums right;

        private Row(int nodes) {
            left = new Sums(nodes);
            right = new Sums(nodes);
        }

        private Sums toward(double side) {
            return side >= 0.0 ? left : right;
        }
    }

    private RoadBalance(double lengthM, List<Row> laps, Row all) {
        this.lengthM = lengthM;
        this.laps = List.copyOf(laps);
        this.all = all;
    }

    /**
     * Lays out the judged laps of a stint.
     *
     * @param angle  at each sample, rad, without the sign of the turn; positive: understeer
     */
    static RoadBalance of(Stint stint, HandlingTrace trace, Channel angle) {
        double length = stint.circuit().line().lengthM();
        int nodes = Math.max(1, (int) Math.round(length / NODE_M));
        Row all = new Row(nodes);
        List<Row> laps = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            Row row = new Row(nodes);
            for (int i = lap.from() + 1; i < lap.to(); i++) {
                lay(stint, trace, angle, i, length, row, all);
            }
            laps.add(row);
        }
        return new RoadBalance(length, laps, all);
    }

    /** Lays what lies between a sample and the one before onto the nodes between them. */
    private static void lay(Stint stint, HandlingTrace trace, Channel angles, int i, double length, Row row, Row all) {
        double from = stint.station().get(i - 1);
        double to = stint.station().get(i);
        to += to < from - 0.5 * length ? length : 0.0;
        double before = signed(trace, angles, i - 1);
        double after = signed(trace, angles, i);
        if (!(to > from && to - from < GAP_M) || Double.isNaN(before + after)) {
            return;
        }
        int nodes = row.left.angle.length;
        double nodeM = length / nodes;
        double lateral = 0.5 * (trace.lateral().get(i - 1) + trace.lateral().get(i));
        double weight = Math.abs(lateral) * stint.recording().stepS() * nodeM / (to - from);
        for (int k = (int) Math.ceil(from / nodeM); k * nodeM < to; k++) {
            double share = (k * nodeM - from) / (to - from);
            int node = Math.floorMod(k, nodes);
            double angle = before + share * (after - before);
            row.toward(lateral).add(node, angle, weight);
            all.toward(lateral).add(node, angle, weight);
        }
    }

    private static double signed(HandlingTrace trace, Channel angles, int i) {
        return Math.signum(trace.lateral().get(i)) * angles.get(i);
    }

    /** Returns the mean angle of all laps at a place, rad, left turns positive; empty where none has it. */
    OptionalDouble at(double station) {
        int nodes = all.left.angle.length;
        int node = Double.isFinite(station) ? Math.floorMod((int) Math.round(station / lengthM * nodes), nodes) : -1;
        if (node < 0) {
            return OptionalDouble.empty();
        }
        double weight = all.left.weight[node] + all.right.weight[node];
        return weight > 0.0
                ? OptionalDouble.of((all.left.angle[node] + all.right.angle[node]) / weight)
                : OptionalDouble.empty();
    }

    /**
     * Returns the mean angle of each lap over a stretch, weighted with lateral acceleration and time, rad, left turns positive.
     *
     * @param fromM  start, m along the line, unwrapped
     * @param toM    end, m, behind the start
     * @param side   positive for cornering to the left, negative to the right
     * @return one value for each lap that cornered that way there
     */
    double[] over(double fromM, double toM, double side) {
        double nodeM = lengthM / all.left.angle.length;
        return laps.stream()
                .mapToDouble(row -> row.toward(side).mean(fromM / nodeM, toM / nodeM))
                .filter(Double::isFinite)
                .toArray();
    }
}
