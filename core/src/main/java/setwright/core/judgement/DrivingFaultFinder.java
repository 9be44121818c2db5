package setwright.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.judgement.DrivingFault.Proof;
import setwright.core.numerics.Robust;
import setwright.core.numerics.SlopeInterval;

/*
 * Design note. A habit is what shows in most passes of a corner, so that one slip is none. What it costs is asked of the same
 * driver: do the passes that show more of it take longer? Where they do, clear of chance, the price is what he would gain if
 * each pass showed no more of it than the better quarter of his own. A habit that never varies costs something too, but these
 * laps cannot say how much, and then nothing is said.
 */

/** Names the driver's habits that cost time or hide what the car does. */
final class DrivingFaultFinder {
    /** A habit is what happens in most passes of a corner. */
    private static final double MOST = 0.5;

    /** Fewer corners than this are places, not a way to drive. */
    static final int FEWEST_CORNERS = 3;

    static final double BRAKE_HELD_S = HabitRule.BRAKE_HELD_S;

    private DrivingFaultFinder() {}

    static List<DrivingFault> find(Stint stint, List<CornerPass> passes, CarSheet sheet) {
        Map<Integer, List<CornerPass>> byCorner = byCorner(passes);
        List<DrivingFault> faults = Stream.of(
                        HabitRule.ALL.stream().flatMap(rule -> fault(rule, byCorner).stream()),
                        OverdrivenEntry.find(stint, byCorner).stream(),
                        ShiftFaults.find(stint, sheet).stream())
                .flatMap(found -> found)
                .sorted(Comparator.comparingDouble((DrivingFault f) ->
                                f.cost().map(LostTime::seconds).orElse(0.0))
                        .thenComparingDouble(f -> f.lapShare() * f.corners().size())
                        .reversed())
                .toList();
        // one habit under one name
        boolean early = faults.stream().anyMatch(fault -> fault.kind().equals(HabitRule.TOO_EARLY));
        return faults.stream()
                .filter(fault -> !early || !fault.kind().equals(HabitRule.LIFTED))
                .toList();
    }

    static Map<Integer, List<CornerPass>> byCorner(List<CornerPass> passes) {
        return passes.stream().collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
    }

    static boolean brakeHeld(Habits habits) {
        return HabitRule.brakeHeld(habits);
    }

    static boolean lifted(Habits habits) {
        return HabitRule.lifted(habits);
    }

    /** Tells whether the hands had to answer the car in this pass. */
    static boolean corrected(CornerPass pass) {
        return HabitRule.corrected(pass);
    }

    private static Optional<DrivingFault> fault(HabitRule rule, Map<Integer, List<CornerPass>> byCorner) {
        List<Proof> proofs = new ArrayList<>();
        List<CornerPass> showing = new ArrayList<>();
        List<LostTime> costs = new ArrayList<>();
        int all = 0;
        int candidates = 0;
        List<Double> exponents = new ArrayList<>();
        for (Map.Entry<Integer, List<CornerPass>> entry : byCorner.entrySet()) {
            List<CornerPass> passes = entry.getValue();
            List<CornerPass> here = passes.stream().filter(rule.shows()).toList();
            if (rule.applies(passes)) {
                candidates++;
                exponents.add(median(passes, rule::exponent));
            }
            if (here.size() > MOST * passes.size()) {
                proofs.add(proof(entry.getKey(), here, rule.size()));
                showing.addAll(here);
                all += passes.size();
                cost(passes, rule.size()).ifPresent(costs::add);
            }
        }
        double[] shapes = exponents.stream().mapToDouble(Double::doubleValue).toArray();
        double exponent = Robust.median(shapes);
        boolean usual =
                Double.isNaN(exponent) ? proofs.size() > rule.every() * candidates : exponent > HabitRule.BEYOND;
        boolean many = proofs.size() >= FEWEST_CORNERS;
        boolean habit = many && usual;
        // three corners show it, and whether it is how he drives lies within the error: told as seen there
        boolean open = many && exponent + Robust.medianError(shapes) > HabitRule.BEYOND;
        if (proofs.isEmpty() || (rule.onlyAsHabit() && !habit && !open)) {
            return Optional.empty();
        }
        double typical = Robust.median(showing.stream().mapToDouble(rule.size()).toArray());
        return Optional.of(new DrivingFault(
                rule.kind(),
                proofs.stream().map(Proof::corner).toList(),
                showing.size() / (double) all,
                typical,
                rule.unit(),
                proofs,
                costs.isEmpty() ? Optional.empty() : Optional.of(LostTime.sum(costs)),
                habit));
    }

    private static double median(List<CornerPass> passes, ToDoubleFunction<CornerPass> value) {
        return Robust.median(passes.stream().mapToDouble(value).toArray());
    }

    static Proof proof(int corner, List<CornerPass> showing, ToDoubleFunction<CornerPass> size) {
        CornerPass worst =
                showing.stream().max(Comparator.comparingDouble(size)).orElseThrow();
        return new Proof(
                corner,
                showing.stream().map(CornerPass::lap).sorted().toList(),
                worst.lap(),
                size.applyAsDouble(worst));
    }

    /** What more of it costs at one corner, where these passes show that it costs. */
    private static Optional<LostTime> cost(List<CornerPass> passes, ToDoubleFunction<CornerPass> size) {
        double[] sizes = passes.stream().mapToDouble(size).toArray();
        double[] times = passes.stream().mapToDouble(CornerPass::timeS).toArray();
        SlopeInterval slope = SlopeInterval.of(sizes, times);
        double less = Robust.median(sizes) - Robust.quantile(sizes, 0.25);
        return slope.low() > 0.0 && less > 0.0
                ? Optional.of(new LostTime(less * slope.slope(), less * slope.low(), less * slope.high()))
                : Optional.empty();
    }
}
