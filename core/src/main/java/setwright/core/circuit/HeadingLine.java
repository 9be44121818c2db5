package setwright.core.circuit;

import java.util.Arrays;
import java.util.List;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;

/** Reference line from rate of turn and speed, where there is no position: the middle of the laps' curvature, closed. */
final class HeadingLine {
    private static final double STEP_M = PositionLine.STEP_M;

    private final Motion motion;
    private final Cuts cuts;
    private final List<Integer> laps;
    private final double[] turnRate;

    HeadingLine(Motion motion, double[] turnRate, Cuts cuts, List<Integer> laps) {
        this.motion = motion;
        this.turnRate = turnRate;
        this.cuts = cuts;
        this.laps = laps;
    }

    BuiltLine build() {
        double[] lengths = laps.stream()
                .mapToDouble(lap -> motion.distanceAt(cuts.end(lap)) - motion.distanceAt(cuts.start(lap)))
                .toArray();
        double length = Robust.median(lengths);
        int nodes = Math.max(8, (int) Math.round(length / STEP_M));
        double step = length / nodes;
        HeadingMapper mapper = new HeadingMapper(motion, turnRate, cuts, nodes, step);
        double[][] shifts = new double[laps.size()][nodes];
        double[] time = LapTiming.times(motion, cuts, laps, nodes);
        double[] speed = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            speed[i] = step / (time[i + 1] - time[i]);
        }
        double[] middle = SensedCurvature.smooth(middle(mapper, shifts, nodes), speed, step);
        for (int round = 0; round < 2; round++) {
            for (int k = 0; k < shifts.length; k++) {
                shifts[k] = mapper.shifts(laps.get(k), middle, cuts.marked());
            }
            middle = SensedCurvature.smooth(middle(mapper, shifts, nodes), speed, step);
        }
        boolean yaw = motion.recording().has(Quantity.YAW_RATE);
        LoopClosure closure = new LoopClosure(middle, speed, step, yaw);
        ReferenceLine line = closure.closed();
        double noise = demandNoise(mapper, shifts, middle, speed);
        return new BuiltLine(line, new LineQuality(length, laps.size(), false, closure.gapM(), noise));
    }

    private double[] middle(HeadingMapper mapper, double[][] shifts, int nodes) {
        double[][] curvature = new double[shifts.length][];
        for (int k = 0; k < shifts.length; k++) {
            curvature[k] = mapper.curvature(laps.get(k), shifts[k]);
        }
        double[] middle = new double[nodes];
        double[] here = new double[shifts.length];
        for (int i = 0; i < nodes; i++) {
            for (int k = 0; k < here.length; k++) {
                here[k] = curvature[k][i];
            }
            double median = Robust.median(here);
            middle[i] = Double.isNaN(median) ? 0.0 : median;
        }
        return middle;
    }

    /** Half-second averages of the laps' differences from the middle, over the number of laps, as lateral acceleration. */
    private double demandNoise(HeadingMapper mapper, double[][] shifts, double[] middle, double[] speed) {
        double[] all = new double[shifts.length * (middle.length / 8)];
        int at = 0;
        for (int k = 0; k < shifts.length; k++) {
            double[] curvature = mapper.curvature(laps.get(k), shifts[k]);
            for (int i = 0; i + 8 <= middle.length && at < all.length; i += 8) {
                double sum = 0.0;
                for (int j = i; j < i + 8; j++) {
                    sum += (curvature[j] - middle[j]) * speed[j] * speed[j] / 8.0;
                }
                all[at++] = sum;
            }
        }
        return Robust.scaledMad(Arrays.copyOf(all, at)) / Math.sqrt(shifts.length);
    }
}
