package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.baseline.Baseline;
import setwright.core.circuit.Corner;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.judgement.DrivingFault.Proof;
import setwright.core.numerics.Robust;

/*
 * Design note. A car that is driven harder than in its baseline shows another balance, and nothing of it has to be wrong. Drivers who adapt
 * to a worse car ask less of it, later and more gently; so who asks more of the tyres than in the baseline made the difference himself, at
 * least until he drives as he did. Two ways to ask more are told apart from all that faults of a car make of simulated drivers: a
 * brake that leaves less for cornering (the exponent of its ellipse of friction grew by 0.3 to 0.9 where the driver changed, by 0.1 at
 * most where the car did), and a throttle that is opened further over the same road (by 0.05 to 0.25 of its travel against 0.03).
 */

/** What the feet ask of the tyres that they did not ask in the baseline. */
final class FeetSince {
    /** Nothing, or there is no baseline. */
    static final FeetSince NONE = new FeetSince(List.of());

    /** Good drivers differ from one another by as much either way (see {@link HabitRule#BEYOND}). */
    private static final double DEEPER_EXPONENT = 0.2;
    /** A pedal is pressed from this share of its travel on (common practice). */
    private static final double FURTHER = 0.05;

    private static final double NORMAL_95 = 1.96;

    private final List<DrivingFault> faults;

    private FeetSince(List<DrivingFault> faults) {
        this.faults = List.copyOf(faults);
    }

    /**
     * One way to ask more.
     *
     * @param kind   in plain words
     * @param least  increase that is worth a word
     * @param sizes  how much of it a pass has, given the passes of the baseline through that corner: one reading is enough
     * @param feet   what the foot does more of, likewise, if it is the foot; empty where the sizes say it
     * @param unit   of what is shown of it
     * @param shown  the same in a unit that a driver knows; empty where that is the size
     */
    private record Way(
            String kind,
            double least,
            Reading sizes,
            Optional<Reading> feet,
            String unit,
            Optional<ToDoubleFunction<CornerPass>> shown) {}

    /** Ways to read a pass, given the baseline's passes through that corner. */
    private interface Reading extends Function<List<CornerPass>, List<ToDoubleFunction<CornerPass>>> {}

    /**
     * Compares corner by corner.
     *
     * @param passes  judged ones, on the circuit of the baseline
     * @return what is more in most corners
     */
    static FeetSince of(List<CornerPass> passes, List<Corner> corners, Baseline baseline) {
        Map<Integer, List<CornerPass>> now = DrivingFaultFinder.byCorner(passes);
        Map<Integer, List<CornerPass>> then = DrivingFaultFinder.byCorner(baseline.passes());
        Way brake = new Way(
                HabitRule.DEEPER,
                DEEPER_EXPONENT,
                good -> List.of(pass -> pass.habits().trailShape()),
                Optional.of(good -> SameRoad.trailing(good, corners)),
                "m",
                Optional.of(pass -> pass.events().brakeOff().orElse(Double.NaN)));
        Way throttle = new Way(
                HabitRule.FURTHER,
                FURTHER,
                good -> SameRoad.opening(good, corners),
                Optional.empty(),
                "share of throttle",
                Optional.empty());
        return new FeetSince(Stream.of(brake, throttle)
                .flatMap(way -> fault(way, now, then).stream())
                .toList());
    }

    /** Returns each, as a habit. */
    List<DrivingFault> faults() {
        return faults;
    }

    /** Returns what may have made the balance of a phase. */
    Optional<DrivingFault> behind(Phase phase) {
        return faults.stream().filter(fault -> fault.reaches(phase)).findFirst();
    }

    /** Returns the movement of that foot. */
    Optional<Trigger> trigger(Phase phase) {
        return behind(phase).map(fault -> fault.byTheBrake() ? Trigger.BRAKE_RELEASE : Trigger.THROTTLE_PICK_UP);
    }

    /** Returns the phases whose balance one of them may have made. */
    Set<Phase> reached() {
        return Stream.of(Phase.values())
                .filter(phase -> behind(phase).isPresent())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Optional<DrivingFault> fault(
            Way way, Map<Integer, List<CornerPass>> now, Map<Integer, List<CornerPass>> then) {
        List<Proof> proofs = new ArrayList<>();
        List<Double> increases = new ArrayList<>();
        int judged = 0;
        int showing = 0;
        int all = 0;
        for (Map.Entry<Integer, List<CornerPass>> corner : now.entrySet()) {
            List<CornerPass> good = then.getOrDefault(corner.getKey(), List.of());
            List<Increase> here = increases(way.sizes(), corner.getValue(), good);
            judged += here.isEmpty() ? 0 : 1;
            boolean foot = way.feet().isEmpty()
                    || increases(way.feet().get(), corner.getValue(), good).stream()
                            .anyMatch(one -> one.clear(0.0));
            Optional<Increase> more =
                    here.stream().filter(one -> foot && one.clear(way.least())).findFirst();
            if (more.isPresent()) {
                List<CornerPass> laps = corner.getValue().stream()
                        .filter(pass -> more.get().beyond(pass) >= way.least())
                        .toList();
                Increase told = way.shown()
                        .flatMap(size -> Increase.of(laps, good, size))
                        .orElse(more.get());
                proofs.add(DrivingFaultFinder.proof(corner.getKey(), laps, told::beyond));
                increases.add(told.median());
                showing += laps.size();
                all += corner.getValue().size();
            }
        }
        if (proofs.size() < DrivingFaultFinder.FEWEST_CORNERS || proofs.size() <= HabitRule.MOST_CORNERS * judged) {
            return Optional.empty();
        }
        return Optional.of(new DrivingFault(
                way.kind(),
                proofs.stream().map(Proof::corner).toList(),
                showing / (double) all,
                Robust.median(
                        increases.stream().mapToDouble(Double::doubleValue).toArray()),
                way.unit(),
                proofs,
                Optional.empty(),
                true));
    }

    private static List<Increase> increases(Reading reading, List<CornerPass> now, List<CornerPass> then) {
        return reading.apply(then).stream()
                .flatMap(size -> Increase.of(now, then, size).stream())
                .toList();
    }

    /**
     * How much more of something there is at a corner.
     *
     * @param size    of a pass
     * @param usual   median of the baseline's passes
     * @param median  difference of the medians
     * @param error   its standard error
     */
    private record Increase(ToDoubleFunction<CornerPass> size, double usual, double median, double error) {
        static Optional<Increase> of(List<CornerPass> now, List<CornerPass> then, ToDoubleFunction<CornerPass> size) {
            double[] these =
                    now.stream().mapToDouble(size).filter(Double::isFinite).toArray();
            double[] those =
                    then.stream().mapToDouble(size).filter(Double::isFinite).toArray();
            if (Math.min(these.length, those.length) < Baseline.FEWEST_LAPS) {
                return Optional.empty();
            }
            double usual = Robust.median(those);
            return Optional.of(new Increase(
                    size,
                    usual,
                    Robust.median(these) - usual,
                    Math.hypot(Robust.medianError(these), Robust.medianError(those))));
        }

        /** Returns how much more a pass has; nothing where it cannot be told. */
        double beyond(CornerPass pass) {
            double more = size.applyAsDouble(pass) - usual;
            return Double.isNaN(more) ? 0.0 : more;
        }

        boolean clear(double least) {
            return median >= least && median > NORMAL_95 * error;
        }
    }
}
