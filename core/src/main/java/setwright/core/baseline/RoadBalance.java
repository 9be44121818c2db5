package setwright.core.baseline;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.HandlingTrace;

/*
 * Design note. Two stints are compared place by place, not phase by phase: had each its own phases, the same car braked a little
 * longer would seem to have another balance. So the balance is laid out along the road, lap by lap, and any stretch can be asked for.
 * Angles keep the sign of the turn (left positive), since a place of the road has one turn whichever way the car rolls there.
 */

/** The balance of one stint along the road, lap by lap. */
final class RoadBalance {
    private static final double NODE_M = 1.0;
    /** Samples farther apart have a gap between them; at 50 rows a second a car at 100 m/s leaves 2 m. */
    private static final double GAP_M = 12.0;

    private final double lengthM;
    private final List<Row> laps;
    private final Row all;

    /** Sums by node: the signed angle times its weight, and the weight (lateral acceleration times time, m/s). */
    private static final class Row {
        private final double[] angle;
        private final double[] weight;

        private Row(int nodes) {
            angle = new double[nodes];
            weight = new double[nodes];
        }

        private void add(int node, double signed, double w) {
            angle[node] += w * signed;
            weight[node] += w;
        }
    }

    private RoadBalance(double lengthM, List<Row> laps, Row all) {
        this.lengthM = lengthM;
        this.laps = List.copyOf(laps);
        this.all = all;
    }

    /** Lays out the judged laps of a stint. */
    static RoadBalance of(Stint stint, HandlingTrace trace) {
        double length = stint.circuit().line().lengthM();
        int nodes = Math.max(1, (int) Math.round(length / NODE_M));
        Row all = new Row(nodes);
        List<Row> laps = new ArrayList<>();
        for (Lap lap : stint.goodLaps()) {
            Row row = new Row(nodes);
            for (int i = lap.from() + 1; i < lap.to(); i++) {
                lay(stint, trace, i, length, row, all);
            }
            laps.add(row);
        }
        return new RoadBalance(length, laps, all);
    }

    /** Lays what lies between a sample and the one before onto the nodes between them. */
    private static void lay(Stint stint, HandlingTrace trace, int i, double length, Row row, Row all) {
        double from = stint.station().get(i - 1);
        double to = stint.station().get(i);
        to += to < from - 0.5 * length ? length : 0.0;
        double before = signed(trace, i - 1);
        double after = signed(trace, i);
        if (!(to > from && to - from < GAP_M) || Double.isNaN(before + after)) {
            return;
        }
        double nodeM = length / row.angle.length;
        double lateral = 0.5
                * (Math.abs(trace.lateral().get(i - 1))
                        + Math.abs(trace.lateral().get(i)));
        double weight = lateral * stint.recording().stepS() * nodeM / (to - from);
        for (int k = (int) Math.ceil(from / nodeM); k * nodeM < to; k++) {
            double share = (k * nodeM - from) / (to - from);
            int node = Math.floorMod(k, row.angle.length);
            double angle = before + share * (after - before);
            row.add(node, angle, weight);
            all.add(node, angle, weight);
        }
    }

    private static double signed(HandlingTrace trace, int i) {
        return Math.signum(trace.lateral().get(i)) * trace.balance().get(i);
    }

    /** Returns the mean angle of all laps at a place, rad, left turns positive; empty where none has it. */
    OptionalDouble at(double station) {
        int nodes = all.angle.length;
        int node = Double.isFinite(station) ? Math.floorMod((int) Math.round(station / lengthM * nodes), nodes) : -1;
        return node >= 0 && all.weight[node] > 0.0
                ? OptionalDouble.of(all.angle[node] / all.weight[node])
                : OptionalDouble.empty();
    }

    /**
     * Returns the mean angle of each lap over a stretch, weighted with lateral acceleration and time, rad, left turns positive.
     *
     * @param fromM  start, m along the line, unwrapped
     * @param toM    end, m, not before the start
     * @return one value for each lap that drove it
     */
    double[] over(double fromM, double toM) {
        double nodeM = lengthM / all.angle.length;
        int first = (int) Math.round(fromM / nodeM);
        int last = Math.max(first, (int) Math.round(toM / nodeM));
        return laps.stream()
                .mapToDouble(row -> mean(row, first, last))
                .filter(Double::isFinite)
                .toArray();
    }

    private static double mean(Row row, int first, int last) {
        double sum = 0.0;
        double total = 0.0;
        for (int k = first; k <= last; k++) {
            int node = Math.floorMod(k, row.angle.length);
            sum += row.angle[node];
            total += row.weight[node];
        }
        return sum / total;
    }
}
