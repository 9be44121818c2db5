package setwright.intake.calibrate;

import java.util.ArrayList;
import java.util.List;
import setwright.core.recording.Quantity;

/** Samples at which the start line was crossed, as far as a channel tells. */
final class LapStarts {
    private LapStarts() {}

    /** Returns the samples in rising order; none when no channel tells. */
    static int[] of(Bench bench) {
        List<Integer> starts = new ArrayList<>();
        if (bench.has(Quantity.LAP_NUMBER)) {
            steps(bench.get(Quantity.LAP_NUMBER), starts, (before, now) -> now > before);
        } else if (bench.has(Quantity.LAP_TRIGGER)) {
            steps(bench.get(Quantity.LAP_TRIGGER), starts, (before, now) -> before == 0.0 && now != 0.0);
        } else if (bench.has(Quantity.LAP_DISTANCE)) {
            // Half a kilometre back at once is a new lap, not noise.
            steps(bench.get(Quantity.LAP_DISTANCE), starts, (before, now) -> now < before - 500.0);
        }
        return starts.stream().mapToInt(Integer::intValue).toArray();
    }

    private interface Crossing {
        boolean between(double before, double now);
    }

    private static void steps(double[] values, List<Integer> starts, Crossing crossing) {
        double last = Double.NaN;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                if (!Double.isNaN(last) && crossing.between(last, values[i])) {
                    starts.add(i);
                }
                last = values[i];
            }
        }
    }
}
