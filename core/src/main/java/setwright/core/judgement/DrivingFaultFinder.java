package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** One habit: what it is called, how it shows in a pass, how large it is there. */
    private record Habit(String kind, String unit, Predicate<CornerPass> shows, ToDoubleFunction<Habits> size) {}

    private static final List<Habit> HABITS = List.of(
            new Habit(
                    "brake held into the middle of the corner",
                    "s",
                    pass -> brakeHeld(pass.habits()),
                    Habits::brakeHeldS),
            new Habit(
                    "throttle picked up, then lifted",
                    "share of throttle",
                    pass -> lifted(pass.habits()),
                    Habits::liftAfter),
            new Habit(
                    "throttle and brake together", "s", pass -> pass.habits().overlapS() > OVERLAP_S, Habits::overlapS),
            new Habit(
                    "brake squeezed again after easing",
                    "share of brake",
                    pass -> pass.habits().brakeAgain() > CLEAR_PEDAL_MOVE,
                    Habits::brakeAgain),
            new Habit("coasting with neither pedal", "s", pass -> pass.habits().coastS() > COASTING_S, Habits::coastS),
            new Habit("on the engine's limiter", "s", pass -> pass.habits().limiterS() > LIMITER_S, Habits::limiterS),
            new Habit(
                    "sawing at the wheel that the car does not call for",
                    "reversals per s",
                    pass -> hands(pass, HandsEvent.Kind.SAWING) && pass.slides().isEmpty(),
                    Habits::reversalsPerS));

    static List<DrivingFault> find(List<CornerPass> passes) {
        Map<Integer, List<CornerPass>> byCorner =
                passes.stream().collect(Collectors.groupingBy(CornerPass::corner, TreeMap::new, Collectors.toList()));
        return HABITS.stream()
                .flatMap(habit -> fault(habit, byCorner).stream())
                .sorted((a, b) -> Double.compare(
                        b.lapShare() * b.corners().size(),
                        a.lapShare() * a.corners().size()))
                .toList();
    }

    static boolean brakeHeld(Habits habits) {
        return habits.brakeHeldS() > BRAKE_HELD_S;
    }

    static boolean lifted(Habits habits) {
        return habits.liftAfter() > CLEAR_PEDAL_MOVE;
    }

    /** Tells whether the hands had to answer the car in this pass. */
    static boolean corrected(CornerPass pass) {
        return hands(pass, HandsEvent.Kind.CORRECTION);
    }

    private static boolean hands(CornerPass pass, HandsEvent.Kind kind) {
        return pass.hands().stream().anyMatch(event -> event.kind() == kind);
    }

    private static Optional<DrivingFault> fault(Habit habit, Map<Integer, List<CornerPass>> byCorner) {
        List<Integer> corners = new ArrayList<>();
        List<CornerPass> showing = new ArrayList<>();
        int all = 0;
        for (Map.Entry<Integer, List<CornerPass>> entry : byCorner.entrySet()) {
            List<CornerPass> here =
                    entry.getValue().stream().filter(habit.shows()).toList();
            if (here.size() > MOST * entry.getValue().size()) {
                corners.add(entry.getKey());
                showing.addAll(here);
                all += entry.getValue().size();
            }
        }
        if (corners.isEmpty()) {
            return Optional.empty();
        }
        double typical = Robust.median(showing.stream()
                .map(CornerPass::habits)
                .mapToDouble(habit.size())
                .toArray());
        return Optional.of(
                new DrivingFault(habit.kind(), corners, showing.size() / (double) all, typical, habit.unit()));
    }
}
