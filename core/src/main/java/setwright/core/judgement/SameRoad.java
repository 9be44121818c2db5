package setwright.core.judgement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import setwright.core.baseline.Baseline;
import setwright.core.circuit.Corner;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PassShapes;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** Reads the pedals of a pass over the road on which they were used in the baseline; nothing where they were not. */
final class SameRoad {
    /** Some car lengths. */
    private static final double BEYOND_M = 10.0;

    private SameRoad() {}

    /**
     * From where the throttle was picked up in the baseline to where it was fully open: how far it is open over all of that road, and the
     * furthest in its first half, as a driver who opens too soon may have to close again.
     */
    static List<ToDoubleFunction<CornerPass>> opening(List<CornerPass> good, List<Corner> corners) {
        Optional<Corner> corner = corner(good, corners);
        double from = median(good, pass -> pass.events().throttlePickUp());
        double to = median(good, pass -> pass.events().fullThrottle());
        if (corner.isEmpty() || !(to > from)) {
            return List.of();
        }
        int first = point(corner.get(), from);
        int last = Math.max(first, point(corner.get(), to));
        int middle = (first + last) / 2;
        return List.of(
                pass -> mean(pass.shapes().throttle(), first, last),
                pass -> most(pass.shapes().throttle(), first, middle));
    }

    /**
     * How much brake there is over the last half of the road on which it was eased in the baseline, and a little beyond: who comes along
     * slower brakes less in all, and what is left of it looks deep.
     */
    static List<ToDoubleFunction<CornerPass>> trailing(List<CornerPass> good, List<Corner> corners) {
        Optional<Corner> corner = corner(good, corners);
        double from = median(good, pass -> pass.events().turnIn());
        double to = median(good, pass -> pass.events().brakeOff());
        if (corner.isEmpty() || !(to > from)) {
            return List.of();
        }
        int first = point(corner.get(), 0.5 * (from + to));
        int last = point(corner.get(), to + BEYOND_M);
        return List.of(pass -> mean(pass.shapes().brake(), first, last));
    }

    private static Optional<Corner> corner(List<CornerPass> good, List<Corner> corners) {
        return corners.stream()
                .filter(found ->
                        !good.isEmpty() && found.number() == good.get(0).corner())
                .findFirst();
    }

    private static double median(List<CornerPass> passes, Function<CornerPass, OptionalDouble> event) {
        double[] there = passes.stream()
                .flatMapToDouble(pass -> event.apply(pass).stream())
                .toArray();
        return there.length < Baseline.FEWEST_LAPS ? Double.NaN : Robust.median(there);
    }

    private static int point(Corner corner, double station) {
        return (int) Math.round(PassShapes.place(corner, station));
    }

    private static double mean(Channel shape, int first, int last) {
        double sum = 0.0;
        for (int k = first; k <= last; k++) {
            sum += shape.get(k);
        }
        return sum / (last - first + 1);
    }

    private static double most(Channel shape, int first, int last) {
        double most = shape.get(first);
        for (int k = first + 1; k <= last; k++) {
            most = Math.max(most, shape.get(k));
        }
        return most;
    }
}
