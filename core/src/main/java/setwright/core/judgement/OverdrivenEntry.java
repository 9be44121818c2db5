package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PassShapes;
import setwright.core.judgement.DrivingFault.Proof;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;

/*
 * Design note. Too fast into a corner is not a speed, it is a trade that does not pay. So nothing is compared with a limit: over
 * this driver's own laps, the faster he comes to the usual turn-in point, the longer the corner takes him, clear of chance, and
 * on these laps he is back on the throttle later or leaves the corner slower. Speed is read at one place for all laps, not where
 * each lap turned in.
 */

/** Finds corners that the driver enters faster than pays. */
final class OverdrivenEntry {
    static final String KIND = "too fast into the corner, and slower through it";
    /** An order of six points has an interval at the 5 % level that is worth something. */
    private static final int FEWEST_PASSES = 6;
    /** Faster than the better laps by less than this is no fault a driver can feel, m/s (2 km/h, orientation). */
    private static final double LEAST_MPS = 2.0 / 3.6;

    private OverdrivenEntry() {}

    static Optional<DrivingFault> find(Stint stint, Map<Integer, List<CornerPass>> byCorner) {
        List<Proof> proofs = new ArrayList<>();
        List<LostTime> costs = new ArrayList<>();
        List<Double> sizes = new ArrayList<>();
        int shown = 0;
        int all = 0;
        for (Corner corner : stint.circuit().corners()) {
            List<CornerPass> passes = byCorner.getOrDefault(corner.number(), List.of());
            if (passes.size() < FEWEST_PASSES) {
                continue;
            }
            ToDoubleFunction<CornerPass> entry = entrySpeed(corner, passes);
            double[] speeds = passes.stream().mapToDouble(entry).toArray();
            double[] times = passes.stream().mapToDouble(CornerPass::timeS).toArray();
            SlopeInterval slope = SlopeInterval.of(speeds, times);
            double good = better(speeds, times);
            List<CornerPass> over = passes.stream()
                    .filter(pass -> entry.applyAsDouble(pass) > good + LEAST_MPS)
                    .filter(pass -> pass.timeS() > Robust.median(times))
                    .toList();
            if (slope.low() > 0.0 && over.size() >= 2 && paysLater(passes, speeds)) {
                ToDoubleFunction<CornerPass> excess = pass -> 3.6 * (entry.applyAsDouble(pass) - good);
                proofs.add(DrivingFaultFinder.proof(corner.number(), over, excess));
                over.forEach(pass -> sizes.add(excess.applyAsDouble(pass)));
                double less = Math.max(0.0, Robust.median(speeds) - Robust.quantile(speeds, 0.25));
                costs.add(new LostTime(less * slope.slope(), less * slope.low(), less * slope.high()));
                shown += over.size();
                all += passes.size();
            }
        }
        if (proofs.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DrivingFault(
                KIND,
                proofs.stream().map(Proof::corner).toList(),
                shown / (double) all,
                Robust.median(sizes.stream().mapToDouble(Double::doubleValue).toArray()),
                "km/h",
                proofs,
                Optional.of(LostTime.sum(costs)),
                false));
    }

    /** Median entry speed of the quicker half of the passes, m/s. */
    private static double better(double[] speeds, double[] times) {
        double middle = Robust.median(times);
        List<Double> quick = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            if (times[i] <= middle) {
                quick.add(speeds[i]);
            }
        }
        return Robust.median(quick.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static boolean paysLater(List<CornerPass> passes, double[] speeds) {
        double[] pickUp = passes.stream()
                .mapToDouble(pass -> pass.events().throttlePickUp().orElse(Double.NaN))
                .toArray();
        double[] exit = passes.stream().mapToDouble(CornerPass::exitSpeedMps).toArray();
        return SlopeInterval.of(speeds, pickUp).low() > 0.0
                || SlopeInterval.of(speeds, exit).high() < 0.0;
    }

    private static ToDoubleFunction<CornerPass> entrySpeed(Corner corner, List<CornerPass> passes) {
        double turnIn = Robust.median(passes.stream()
                .mapToDouble(pass -> pass.events().turnIn().orElse(Double.NaN))
                .toArray());
        return pass -> PassShapes.at(pass.shapes().speed(), corner, turnIn);
    }
}
