package setwright.core.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;

/**
 * Laps from the repeat of curvature over distance, where the logger gave neither a mark nor a position.
 *
 * <p>The lap length is the shortest lag at which the curvature correlates with itself about as well as at any other and
 * over which the car has turned round a whole number of times (or not at all, for a figure of eight): half a lap of a
 * symmetric oval repeats too, but turns only half round.
 */
final class CurvatureRepeat {
    private static final double CELL_M = 4.0;
    /** No circuit is shorter, m. */
    private static final double SHORTEST_LAP_M = 250.0;
    /** No circuit that is lapped is longer, m. */
    private static final double LONGEST_LAP_M = 30_000.0;
    /** A stretch of this many longest laps is enough to find the length; more only takes time. */
    private static final int STRETCH = 3;
    /** A repeat that explains less than a quarter of the variance (r below 0.5) is none. */
    private static final double LEAST_CORRELATION = 0.5;

    private final Motion motion;
    private final double[] heading;
    private final double[] curvature;

    private CurvatureRepeat(Motion motion, double[] turnRate) {
        this.motion = motion;
        this.heading = CurvatureTrace.headings(motion, turnRate);
        int cells = (int) (motion.distance(motion.size() - 1) / CELL_M);
        this.curvature = CurvatureTrace.cells(motion, heading, 0.0, CELL_M, cells);
        double middle = Robust.median(curvature);
        for (int i = 0; i < cells; i++) {
            curvature[i] -= middle;
        }
    }

    /** Returns the laps found; empty without a rate of turn or without a repeat. */
    static Optional<Cuts> find(Motion motion) {
        if (motion.turnRate().isEmpty() || motion.distance(motion.size() - 1) < 2.0 * SHORTEST_LAP_M) {
            return Optional.empty();
        }
        return new CurvatureRepeat(motion, motion.turnRate().get()).cuts();
    }

    private Optional<Cuts> cuts() {
        Optional<Integer> lap = lapCells();
        if (lap.isEmpty()) {
            return Optional.empty();
        }
        int first = middleOfStraight(lap.get());
        List<Crossing> crossings = new ArrayList<>();
        double cell = first;
        while (cell >= 0.0 && cell <= curvature.length) {
            crossings.add(new Crossing(motion.sampleAt(cell * CELL_M), Crossing.UNNUMBERED));
            double next = cell + lap.get();
            cell = next + shift(first, next, lap.get());
        }
        cell = first;
        while (true) {
            cell -= lap.get();
            cell += shift(first, cell, lap.get());
            if (cell < 0.0) {
                break;
            }
            crossings.add(0, new Crossing(motion.sampleAt(cell * CELL_M), Crossing.UNNUMBERED));
        }
        return crossings.size() < 2
                ? Optional.empty()
                : Optional.of(new Cuts("repeat of curvature over distance", false, crossings));
    }

    private Optional<Integer> lapCells() {
        int shortest = (int) (SHORTEST_LAP_M / CELL_M);
        int longest = (int) Math.min(curvature.length * 2L / 3L, (long) (LONGEST_LAP_M / CELL_M));
        double[] correlation = new double[longest + 1];
        double best = 0.0;
        for (int lag = shortest; lag <= longest; lag++) {
            correlation[lag] = correlation(lag);
            if (turnsWhole(lag)) {
                best = Math.max(best, correlation[lag]);
            }
        }
        if (best < LEAST_CORRELATION) {
            return Optional.empty();
        }
        for (int lag = shortest + 1; lag < longest; lag++) {
            boolean peak = correlation[lag] >= correlation[lag - 1] && correlation[lag] >= correlation[lag + 1];
            if (peak && correlation[lag] > 0.8 * best && turnsWhole(lag)) {
                return Optional.of(lag);
            }
        }
        return Optional.empty();
    }

    private double correlation(int lag) {
        int end = (int) Math.min(curvature.length, STRETCH * (long) (LONGEST_LAP_M / CELL_M));
        double product = 0.0;
        double left = 0.0;
        double right = 0.0;
        for (int i = lag; i < end; i++) {
            product += curvature[i] * curvature[i - lag];
            left += curvature[i] * curvature[i];
            right += curvature[i - lag] * curvature[i - lag];
        }
        double scale = Math.sqrt(left * right);
        return scale > 0.0 ? product / scale : 0.0;
    }

    /** Tells whether the car turns by one turn or by none in this many cells, within a sixth of a turn for gyro bias. */
    private boolean turnsWhole(int lag) {
        int samples = 24;
        double[] turns = new double[samples];
        double span = motion.distance(motion.size() - 1) - lag * CELL_M;
        for (int k = 0; k < samples; k++) {
            double from = span * k / (samples - 1);
            turns[k] = Math.abs(Gaps.between(heading, motion.sampleAt(from + lag * CELL_M))
                            - Gaps.between(heading, motion.sampleAt(from)))
                    / (2.0 * Math.PI);
        }
        double middle = Robust.median(turns);
        return middle < 1.5 && Math.abs(middle - Math.rint(middle)) < 1.0 / 6.0;
    }

    /** The cell in the second lap's length, or the first when there is no other, farthest from any real curvature. */
    private int middleOfStraight(int lap) {
        int from = curvature.length >= 3 * lap ? lap : 0;
        double bend = 0.1 * Robust.quantile(absolute(), 0.98);
        int best = from;
        int longest = 0;
        int start = from;
        for (int i = from; i <= Math.min(from + 2 * lap, curvature.length); i++) {
            if (i == curvature.length || i == from + 2 * lap || Math.abs(curvature[i]) > bend) {
                if (i - start > longest) {
                    longest = i - start;
                    best = start + longest / 2;
                }
                start = i + 1;
            }
        }
        return best >= from + lap ? best - lap : best;
    }

    private double[] absolute() {
        double[] size = curvature.clone();
        for (int i = 0; i < size.length; i++) {
            size[i] = Math.abs(size[i]);
        }
        return size;
    }

    /** How many cells to add to {@code place} so that the curvature around it agrees best with that around the reference. */
    private double shift(int reference, double place, int lap) {
        int reach = Math.max(3, (int) Math.round(0.03 * lap));
        int half = lap / 4;
        double[] misfit = new double[2 * reach + 1];
        int bestAt = reach;
        for (int s = -reach; s <= reach; s++) {
            double sum = 0.0;
            int count = 0;
            for (int k = -half; k < half; k++) {
                int a = reference + k;
                int b = (int) Math.round(place) + s + k;
                if (a >= 0 && a < curvature.length && b >= 0 && b < curvature.length) {
                    double difference = curvature[a] - curvature[b];
                    sum += difference * difference;
                    count++;
                }
            }
            misfit[s + reach] = count < lap / 8 ? Double.POSITIVE_INFINITY : sum / count;
            if (misfit[s + reach] < misfit[bestAt]) {
                bestAt = s + reach;
            }
        }
        double rounding = Math.round(place) - place;
        if (bestAt == 0 || bestAt == 2 * reach || Double.isInfinite(misfit[bestAt - 1] + misfit[bestAt + 1])) {
            return Double.isInfinite(misfit[bestAt]) ? 0.0 : bestAt - reach + rounding;
        }
        double a = misfit[bestAt - 1];
        double b = misfit[bestAt];
        double c = misfit[bestAt + 1];
        double bend = a - 2.0 * b + c;
        return bestAt - reach + rounding + (bend > 0.0 ? 0.5 * (a - c) / bend : 0.0);
    }
}
