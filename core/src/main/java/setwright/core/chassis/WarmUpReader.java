package setwright.core.chassis;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Lap;
import setwright.core.numerics.ExponentialApproach;
import setwright.core.recording.Quantity;

/*
 * Design note. A body that is heated evenly and loses heat in proportion to how much warmer than its surroundings it is comes to its
 * temperature exponentially (Newton's law of cooling). Laps are even enough for that; out laps and slow ones are used as well.
 */

/** Fits how tyres warm up. */
final class WarmUpReader {
    private static final List<Quantity> TYRES = Arrays.stream(Wheel.values())
            .map(wheel -> wheel.of("TYRE_TEMPERATURE"))
            .toList();
    private static final int FEWEST_LAPS = 5;
    /** Two degrees are what a tyre's grip does not notice and sensors hardly tell (common practice). */
    private static final double STEADY_K = 2.0;

    private WarmUpReader() {}

    static void read(Motion motion, ChassisEvidence.Builder into) {
        if (!motion.has(TYRES)) {
            into.missing(Subject.WARM_UP, false, "no temperature of every tyre was recorded");
            return;
        }
        List<Lap> laps = motion.laps().stream()
                .filter(lap -> Double.isFinite(mean(motion, lap)))
                .toList();
        if (laps.size() < FEWEST_LAPS) {
            into.missing(Subject.WARM_UP, true, "fewer than " + FEWEST_LAPS + " laps have temperatures");
            return;
        }
        double step = motion.recording().stepS();
        double start = laps.get(0).from() * step;
        double[] time = laps.stream()
                .mapToDouble(lap -> 0.5 * (lap.from() + lap.to()) * step - start)
                .toArray();
        double[] temperature =
                laps.stream().mapToDouble(lap -> mean(motion, lap)).toArray();
        ExponentialApproach fit = ExponentialApproach.fit(time, temperature);
        if (!fit.explains() || fit.rise() < STEADY_K) {
            into.missing(
                    Subject.WARM_UP,
                    true,
                    "the tyres do not come up to a steady temperature beyond what laps scatter by");
            return;
        }
        int steady = 0;
        while (steady < laps.size() - 1 && missing(fit, laps.get(steady), step, start) >= STEADY_K) {
            steady++;
        }
        if (missing(fit, laps.get(steady), step, start) >= STEADY_K) {
            into.missing(Subject.WARM_UP, true, "the tyres were still getting warmer at the end of the stint");
            return;
        }
        into.warmUp = Optional.of(new WarmUp(
                fit.end(),
                fit.rise(),
                fit.tau(),
                fit.tauLow(),
                fit.tauHigh(),
                laps.get(steady).number(),
                steady,
                laps.stream().map(Lap::number).toList(),
                Arrays.stream(temperature).boxed().toList()));
    }

    private static double mean(Motion motion, Lap lap) {
        return TYRES.stream()
                .mapToDouble(tyre -> motion.mean(tyre, lap))
                .average()
                .orElse(Double.NaN);
    }

    /** What is missing at the start of a lap, K. */
    private static double missing(ExponentialApproach fit, Lap lap, double step, double start) {
        return fit.missing(lap.from() * step - start);
    }
}
