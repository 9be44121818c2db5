package setwright.core.circuit;

import java.util.List;
import java.util.stream.IntStream;
import setwright.core.numerics.Robust;

/** How long the typical lap takes to each share of its distance. */
final class LapTiming {
    private LapTiming() {}

    /**
     * Returns the time to each of {@code steps} equal shares of the lap's distance, s, from the median speed of the laps
     * there; one value more than there are steps.
     */
    static double[] times(Motion motion, Cuts cuts, List<Integer> laps, int steps) {
        double[] lengths = new double[laps.size()];
        for (int k = 0; k < lengths.length; k++) {
            lengths[k] = motion.distanceAt(cuts.end(laps.get(k))) - motion.distanceAt(cuts.start(laps.get(k)));
        }
        double step = Robust.median(lengths) / steps;
        double[] speed = IntStream.range(0, steps)
                .parallel()
                .mapToDouble(i -> {
                    double[] here = new double[lengths.length];
                    for (int k = 0; k < here.length; k++) {
                        double start = motion.distanceAt(cuts.start(laps.get(k)));
                        here[k] = motion.speedAt(motion.sampleAt(start + lengths[k] * (i + 0.5) / steps));
                    }
                    return Robust.median(here);
                })
                .toArray();
        double[] time = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            time[i + 1] = time[i] + step / Math.max(1.0, speed[i]);
        }
        return time;
    }
}
