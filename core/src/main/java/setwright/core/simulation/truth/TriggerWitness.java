package setwright.core.simulation.truth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.handling.Phase;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.truth.CornerPhases.Span;

/*
 * Design note. What sets a fault off is known from what was done to the car; the histories can only bear witness. In each corner
 * that shows the problem, the difference of balance along the line (mean over laps, both cars) is followed back from where
 * it is largest to where it passes half of that: there it began. What the driver's feet and hands were doing there is what
 * the corner says.
 */

/** What the driver was doing where a problem began. */
public final class TriggerWitness {
    private static final double STEP_M = 1.0;
    private static final double BEGUN = 0.5;
    /** An event counts when the problem began at most this long after it, s, or this long before, for what was just to come. */
    private static final double AFTER_S = 0.5;

    private static final double BEFORE_S = 0.1;

    private final double[] difference;
    private final double[] speed;

    private TriggerWitness(double[] difference, double[] speed) {
        this.difference = difference;
        this.speed = speed;
    }

    /** What a corner can say. */
    public enum Moment {
        BRAKE_APPLICATION,
        /** The brake coming off in the bend, or held while turning in. */
        BRAKE_RELEASE,
        TURN_IN,
        THROTTLE_PICK_UP,
        /** Between the events: no input. */
        STEADY
    }

    /**
     * Asks the histories.
     *
     * @param map      of the recorded stint
     * @param problem  found in it
     * @return how many of the corners say what; empty when none shows the problem
     */
    public static Map<Moment, Integer> ask(
            PhaseMap map,
            DriveHistory faulty,
            List<Integer> faultyLaps,
            DriveHistory balanced,
            List<Integer> balancedLaps,
            TrueProblem problem) {
        double[] with = profile(map, faulty, faultyLaps, true);
        double[] without = profile(map, balanced, balancedLaps, true);
        double[] difference = new double[with.length];
        double side = problem.sign().direction();
        for (int i = 0; i < with.length; i++) {
            difference[i] = side * (with[i] - without[i]);
        }
        TriggerWitness witness = new TriggerWitness(difference, profile(map, faulty, faultyLaps, false));
        Map<Moment, Integer> said = new EnumMap<>(Moment.class);
        for (CornerPhases corner : map.corners()) {
            if (problem.corners().contains(corner.corner().number())) {
                witness.moment(corner, problem.phase()).ifPresent(moment -> said.merge(moment, 1, Integer::sum));
            }
        }
        return said;
    }

    /** Returns whether witnesses agree with a mechanism: at least half of the corners say what it would. */
    public static boolean agrees(Map<Moment, Integer> said, TrueTrigger trigger) {
        int all = said.values().stream().mapToInt(Integer::intValue).sum();
        int agreeing = right(trigger).stream()
                .mapToInt(moment -> said.getOrDefault(moment, 0))
                .sum();
        return all > 0 && 2 * agreeing >= all;
    }

    private static List<Moment> right(TrueTrigger trigger) {
        return switch (trigger) {
            case TRAIL_BRAKE -> List.of(Moment.BRAKE_RELEASE);
            case BRAKE -> List.of(Moment.BRAKE_APPLICATION);
            case THROTTLE -> List.of(Moment.THROTTLE_PICK_UP);
            case ENTRY_SPEED -> List.of(Moment.TURN_IN, Moment.BRAKE_RELEASE);
            // steady faults grow with the lateral acceleration: they begin as it builds up, or anywhere
            case STEADY, SPEED, NONE -> List.of(Moment.STEADY, Moment.TURN_IN);
            case BUMP -> List.of();
        };
    }

    private Optional<Moment> moment(CornerPhases corner, Phase phase) {
        Optional<Span> span = corner.span(phase);
        if (span.isEmpty()) {
            return Optional.empty();
        }
        double from =
                corner.phases().values().stream().mapToDouble(Span::fromM).min().orElseThrow();
        double top = span.get().fromM();
        for (double s = top; s < span.get().toM(); s += STEP_M) {
            top = at(difference, s) > at(difference, top) ? s : top;
        }
        double begun = top;
        while (begun > from && at(difference, begun) > BEGUN * at(difference, top)) {
            begun -= STEP_M;
        }
        return Optional.of(doing(corner.events(), begun));
    }

    /** The event nearest before; the brake's release lasts from turn-in, or shortly before it, until the brake is off. */
    private Moment doing(CornerPhases.Events events, double place) {
        double v = Math.max(at(speed, place), 5.0);
        List<Moment> now = new ArrayList<>();
        if (within(events.pickUp(), place, v)) {
            now.add(Moment.THROTTLE_PICK_UP);
        }
        boolean braking = place >= events.brakeOn() - BEFORE_S * v && place <= events.brakeOff() + AFTER_S * v;
        if (braking && place > events.turnIn() - BEFORE_S * v) {
            now.add(Moment.BRAKE_RELEASE);
        }
        if (braking && place <= events.turnIn()) {
            now.add(Moment.BRAKE_APPLICATION);
        }
        if (within(events.turnIn(), place, v)) {
            now.add(Moment.TURN_IN);
        }
        return now.isEmpty() ? Moment.STEADY : now.get(0);
    }

    private static boolean within(double event, double place, double speed) {
        return place >= event - BEFORE_S * speed && place <= event + AFTER_S * speed;
    }

    private double at(double[] values, double place) {
        return values[Math.floorMod((int) Math.floor(place / STEP_M), values.length)];
    }

    /** Mean over laps along the line: balance turned with the corner that is near, or speed. */
    private static double[] profile(PhaseMap map, DriveHistory history, List<Integer> laps, boolean balance) {
        Distance distance = new Distance(history, map.lengthM());
        int n = (int) Math.floor(map.lengthM() / STEP_M);
        double[] mean = new double[n];
        for (int lap : laps) {
            for (int i = 0; i < n; i++) {
                int k = Math.min(distance.sampleAt(lap * map.lengthM() + i * STEP_M), history.count() - 1);
                double side = Math.signum(history.at(Signal.LATERAL_ACCELERATION, k));
                double value = balance
                        ? side * (history.at(Signal.SLIP_FRONT, k) - history.at(Signal.SLIP_REAR, k))
                        : history.at(Signal.FORWARD_SPEED, k);
                mean[i] += value / laps.size();
            }
        }
        return mean;
    }
}
