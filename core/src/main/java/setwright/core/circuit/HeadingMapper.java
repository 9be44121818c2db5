package setwright.core.circuit;

import java.util.Arrays;
import setwright.core.numerics.Alignment;
import setwright.core.numerics.Robust;

/**
 * Places samples without any position: travelled distance scaled to the lap's length, then shifted slowly so that the
 * curvature driven lies on the reference curvature.
 */
final class HeadingMapper {
    /** The shift reaches this far each way, m: integrated speed drifts by less within a lap. */
    private static final double REACH_M = 25.0;
    /** Drivers' differences in curvature are alike over about this distance and so count once, m. */
    private static final double ALIKE_M = 30.0;
    /** Shifts of a step are smoothed over this distance each way, m. */
    private static final double SMOOTH_M = 30.0;

    private final Motion motion;
    private final Cuts cuts;
    private final double[] heading;
    private final int nodes;
    private final double stepM;

    HeadingMapper(Motion motion, double[] turnRate, Cuts cuts, int nodes, double stepM) {
        this.motion = motion;
        this.cuts = cuts;
        this.heading = CurvatureTrace.headings(motion, turnRate);
        this.nodes = nodes;
        this.stepM = stepM;
    }

    private double lapStart(int lap) {
        return motion.distanceAt(cuts.start(lap));
    }

    private double perStation(int lap) {
        return (motion.distanceAt(cuts.end(lap)) - lapStart(lap)) / (nodes * stepM);
    }

    /** Curvature of one lap at the nodes moved by {@code shift} nodes, with {@code margin} more on either side, 1/m. */
    private double[] curvature(int lap, double[] shift, int margin) {
        double scale = perStation(lap);
        double[] curvature = new double[nodes + 2 * margin];
        double last = motion.distance(motion.size() - 1);
        for (int i = 0; i < curvature.length; i++) {
            int node = Math.max(0, Math.min(nodes - 1, i - margin));
            double centre = lapStart(lap) + scale * stepM * (i - margin + shift[node]);
            double a = centre - 0.5 * scale * stepM;
            double b = centre + 0.5 * scale * stepM;
            boolean inside = a >= 0.0 && b <= last;
            curvature[i] = inside
                    ? (Gaps.between(heading, motion.sampleAt(b)) - Gaps.between(heading, motion.sampleAt(a))) / stepM
                    : Double.NaN;
        }
        return curvature;
    }

    /** Curvature of a lap at the nodes, 1/m. */
    double[] curvature(int lap, double[] shift) {
        return curvature(lap, shift, 0);
    }

    /** Shift of a lap at each node, in nodes, that lays its curvature on the reference. */
    double[] shifts(int lap, double[] reference, boolean tied) {
        int reach = Math.max(1, (int) Math.round(REACH_M / stepM));
        double[] signal = curvature(lap, new double[nodes], reach);
        double[] difference = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            difference[i] = signal[i + reach] - reference[i];
        }
        double noise = Math.max(1e-5, Robust.scaledMad(difference));
        int[] steps = Alignment.shifts(signal, reference, reach, noise, 8.0 * ALIKE_M / stepM, tied);
        return smooth(steps, (int) Math.round(SMOOTH_M / stepM));
    }

    private static double[] smooth(int[] steps, int reach) {
        double[] sum = new double[steps.length + 1];
        for (int i = 0; i < steps.length; i++) {
            sum[i + 1] = sum[i] + steps[i];
        }
        double[] smooth = new double[steps.length];
        for (int i = 0; i < steps.length; i++) {
            int wide = Math.min(reach, Math.min(i, steps.length - 1 - i));
            smooth[i] = (sum[i + wide + 1] - sum[i - wide]) / (2 * wide + 1);
        }
        return smooth;
    }

    /**
     * Places every sample; those before the first and after the last crossing by distance alone.
     *
     * @param shifts  of each whole lap at each node, in nodes
     */
    Placement place(double[][] shifts) {
        int size = motion.size();
        double length = nodes * stepM;
        double[] station = new double[size];
        double[] offset = new double[size];
        Arrays.fill(station, Double.NaN);
        Arrays.fill(offset, Double.NaN);
        if (cuts.wholeLaps() == 0) {
            return new Placement(station, offset);
        }
        int laps = cuts.wholeLaps();
        for (int i = 0; i < size; i++) {
            if (!motion.known(i)) {
                continue;
            }
            int lap = 0;
            while (lap < laps - 1 && i >= cuts.end(lap)) {
                lap++;
            }
            double raw = (motion.distance(i) - lapStart(lap)) / perStation(lap);
            double placed = raw >= 0.0 && raw < length ? unshifted(raw, shifts[lap]) : raw;
            station[i] = placed - length * Math.floor(placed / length);
        }
        return new Placement(station, offset);
    }

    private double unshifted(double raw, double[] shift) {
        int low = 0;
        int high = nodes;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if ((middle + shift[middle]) * stepM <= raw) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double before = (low + shift[low]) * stepM;
        double after = high < nodes ? (high + shift[high]) * stepM : nodes * stepM + shift[nodes - 1] * stepM;
        double share = after > before ? (raw - before) / (after - before) : 0.0;
        return (low + Math.max(0.0, Math.min(1.0, share))) * stepM;
    }
}
