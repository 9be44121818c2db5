package setwright.core.chassis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Lap;
import setwright.core.recording.Quantity;

/** Reads temperatures across the tread of the laps in which the tyres are warm. */
final class TreadReader {
    /** The middle within five degrees of the edges' mean is usual (common practice). */
    private static final double MIDDLE_K = 5.0;
    /** A tyre that leans in as it should is warmer inside by up to about fifteen degrees, never colder (common practice). */
    private static final double INNER_MOST_K = 15.0;

    private static final double INNER_LEAST_K = 0.0;

    private TreadReader() {}

    static void read(Motion motion, ChassisEvidence.Builder into) {
        int from =
                into.warmUp.map(warm -> warm.laps().indexOf(warm.steadyLap())).orElse(0);
        List<Lap> laps = motion
                .laps()
                .subList(Math.min(from, motion.laps().size()), motion.laps().size())
                .stream()
                .filter(Lap::good)
                .toList();
        List<Tread.OfWheel> wheels = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            List<Quantity> across = List.of(
                    wheel.of("TYRE_TEMPERATURE_INNER"),
                    wheel.of("TYRE_TEMPERATURE_MIDDLE"),
                    wheel.of("TYRE_TEMPERATURE_OUTER"));
            if (motion.has(across)) {
                wheels.add(wheel(motion, laps, wheel, across));
            }
        }
        if (wheels.isEmpty()) {
            into.missing(
                    Subject.TREAD, false, "no temperatures at the inner edge, middle and outer edge were recorded");
        } else if (laps.size() < 2) {
            into.missing(Subject.TREAD, true, "fewer than two judged laps have tyres at a steady temperature");
        } else {
            into.tread =
                    Optional.of(new Tread(wheels, laps.stream().map(Lap::number).toList()));
        }
    }

    private static Tread.OfWheel wheel(Motion motion, List<Lap> laps, Wheel wheel, List<Quantity> across) {
        double[][] means = across.stream()
                .map(quantity -> laps.stream()
                        .mapToDouble(lap -> motion.mean(quantity, lap))
                        .toArray())
                .toArray(double[][]::new);
        double[] lean = new double[laps.size()];
        double[] bulge = new double[laps.size()];
        for (int lap = 0; lap < lean.length; lap++) {
            lean[lap] = means[0][lap] - means[2][lap];
            bulge[lap] = means[1][lap] - 0.5 * (means[0][lap] + means[2][lap]);
        }
        LapInterval innerOver = LapInterval.of(lean);
        LapInterval middleOver = LapInterval.of(bulge);
        return new Tread.OfWheel(
                wheel,
                LapInterval.of(means[0]).mean(),
                LapInterval.of(means[1]).mean(),
                LapInterval.of(means[2]).mean(),
                innerOver,
                middleOver,
                innerOver.above(INNER_MOST_K)
                        ? Tread.Says.CAMBER_MUCH
                        : innerOver.below(INNER_LEAST_K) ? Tread.Says.CAMBER_LITTLE : Tread.Says.NOTHING,
                middleOver.above(MIDDLE_K)
                        ? Tread.Says.PRESSURE_HIGH
                        : middleOver.below(-MIDDLE_K) ? Tread.Says.PRESSURE_LOW : Tread.Says.NOTHING);
    }
}
