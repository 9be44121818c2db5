package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.HandsEvent;
import setwright.core.numerics.Robust;

/** Names the driver's habits that cost time or hide what the car does. */
final class DrivingFaultFinder {
    /** A habit is what happens in most passes of a corner. */
    private static final double MOST = 0.5;

    /** Longer than easing off a trailed brake takes (a quarter to half a second, common practice). */
    static final double BRAKE_HELD_S = 0.5;

    private static final double CLEAR_PEDAL_MOVE = 0.15;
    private static final double OVERLAP_S = 0.2;
    private static final double COASTING_S = 0.5;
    private static final double LIMITER_S = 0.15;

    private DrivingFaultFinder() {}

    static List<DrivingFault> find(List<CornerPass> passes) {
        List<DrivingFault> faults = new ArrayList<>();
        add(
                faults,
                passes,
                "brake held into the middle of the corner",
                "s",
                DrivingFaultFinder::brakeHeld,
                Habits::brakeHeldS);
        add(
                faults,
                passes,
                "throttle picked up, then lifted",
                "share of throttle",
                DrivingFaultFinder::lifted,
                Habits::liftAfter);
        add(
                faults,
                passes,
                "throttle and brake together",
                "s",
                habits -> habits.overlapS() > OVERLAP_S,
                Habits::overlapS);
        add(
                faults,
                passes,
                "brake squeezed again after easing",
                "share of brake",
                habits -> habits.brakeAgain() > CLEAR_PEDAL_MOVE,
                Habits::brakeAgain);
        add(faults, passes, "coasting with neither pedal", "s", habits -> habits.coastS() > COASTING_S, Habits::coastS);
        add(faults, passes, "on the engine's limiter", "s", habits -> habits.limiterS() > LIMITER_S, Habits::limiterS);
        double own = Robust.median(passes.stream()
                .mapToDouble(pass -> pass.habits().reversalsPerS())
                .toArray());
        double usual = own
                + 3.0
                        * Math.max(
                                Robust.scaledMad(passes.stream()
                                        .mapToDouble(pass -> pass.habits().reversalsPerS())
                                        .toArray()),
                                0.3);
        add(
                faults,
                passes.stream().filter(pass -> pass.slides().isEmpty()).toList(),
                "sawing at the wheel that the car does not call for",
                "reversals per s",
                habits -> habits.reversalsPerS() > usual,
                Habits::reversalsPerS);
        faults.sort((a, b) -> Double.compare(
                b.lapShare() * b.corners().size(), a.lapShare() * a.corners().size()));
        return faults;
    }

    static boolean brakeHeld(Habits habits) {
        return habits.brakeHeldS() > BRAKE_HELD_S;
    }

    static boolean lifted(Habits habits) {
        return habits.liftAfter() > CLEAR_PEDAL_MOVE;
    }

    /** Tells whether the hands had to answer the car in this pass. */
    static boolean corrected(CornerPass pass) {
        return pass.hands().stream().anyMatch(event -> event.kind() == HandsEvent.Kind.CORRECTION);
    }

    private static void add(
            List<DrivingFault> faults,
            List<CornerPass> passes,
            String kind,
            String unit,
            Predicate<Habits> shows,
            ToDoubleFunction<Habits> size) {
        Map<Integer, List<CornerPass>> byCorner =
                passes.stream().collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        List<Integer> corners = new ArrayList<>();
        List<Double> sizes = new ArrayList<>();
        int shown = 0;
        int all = 0;
        for (Map.Entry<Integer, List<CornerPass>> entry : byCorner.entrySet()) {
            List<Habits> here =
                    entry.getValue().stream().map(CornerPass::habits).toList();
            List<Habits> showing = here.stream().filter(shows).toList();
            if (showing.size() > MOST * here.size()) {
                corners.add(entry.getKey());
                showing.forEach(habits -> sizes.add(size.applyAsDouble(habits)));
                shown += showing.size();
                all += here.size();
            }
        }
        if (!corners.isEmpty()) {
            double typical = Robust.median(
                    sizes.stream().mapToDouble(Double::doubleValue).toArray());
            faults.add(new DrivingFault(kind, corners, shown / (double) all, typical, unit));
        }
    }
}
