package setwright.core.technique;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import setwright.core.circuit.Corner;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PassShapes;
import setwright.core.numerics.Robust;
import setwright.core.recording.Channel;

/** Reads a lever off the passes through one corner. */
final class LeverValues {
    /** The peak is round: its end is where nine tenths are left. */
    private static final double STILL_AT_PEAK = 0.9;

    /** Points of the shape over which the opening is looked at: a tenth of the corner. */
    private static final int OPENING_POINTS = PassShapes.POINTS / 10;

    private LeverValues() {}

    /**
     * Returns one value for each pass, in the lever's unit; NaN where the pass does not have it.
     *
     * @param passes  through this corner
     */
    static double[] of(Lever lever, Corner corner, List<CornerPass> passes) {
        double slowest = Math.max(1.0, median(passes, CornerPass::lowestSpeedMps));
        double usualTurnIn = median(passes, pass -> orNaN(pass.events().turnIn()));
        return passes.stream()
                .mapToDouble(pass -> of(lever, corner, pass, slowest, usualTurnIn))
                .toArray();
    }

    private static double of(Lever lever, Corner corner, CornerPass pass, double slowestMps, double usualTurnInM) {
        CornerEvents events = pass.events();
        return switch (lever) {
            case BRAKE_AT_TURN_IN -> events.brakeOff().isPresent() ? pass.brakeAtTurnIn() : Double.NaN;
            case OVERLAP -> orNaN(events.brakeOff()) - orNaN(events.turnIn());
            case RELEASE_RATE -> releaseRate(corner, pass);
            case ENTRY_SPEED -> 3.6 * PassShapes.at(pass.shapes().speed(), corner, usualTurnInM);
            case PICK_UP -> (orNaN(events.throttlePickUp()) - corner.turnInM()) / slowestMps;
            case OPENING -> opening(corner, pass);
        };
    }

    /** From the last place with nine tenths of the peak to where the brake is off. */
    private static double releaseRate(Corner corner, CornerPass pass) {
        Channel brake = pass.shapes().brake();
        double off = orNaN(pass.events().brakeOff());
        double peak = pass.habits().brakePeak();
        double step = PassShapes.stepM(corner);
        int last = -1;
        for (int i = 0; i < PassShapes.POINTS && corner.startM() + i * step <= off; i++) {
            last = brake.get(i) >= STILL_AT_PEAK * peak ? i : last;
        }
        if (last < 0 || !(peak > 0.0)) {
            return Double.NaN;
        }
        double from = corner.startM() + last * step;
        double seconds =
                (off - from) / Math.max(1.0, PassShapes.at(pass.shapes().speed(), corner, 0.5 * (from + off)));
        return off - from > step ? STILL_AT_PEAK / seconds : Double.NaN;
    }

    private static double opening(Corner corner, CornerPass pass) {
        double from = orNaN(pass.events().throttlePickUp());
        double step = PassShapes.stepM(corner);
        double to = from + OPENING_POINTS * step;
        if (!(to <= corner.endM())) {
            return Double.NaN;
        }
        Channel throttle = pass.shapes().throttle();
        double seconds = (to - from) / Math.max(1.0, PassShapes.at(pass.shapes().speed(), corner, 0.5 * (from + to)));
        return (PassShapes.at(throttle, corner, to) - PassShapes.at(throttle, corner, from)) / seconds;
    }

    private static double median(List<CornerPass> passes, ToDoubleFunction<CornerPass> value) {
        return Robust.median(passes.stream().mapToDouble(value).toArray());
    }

    private static double orNaN(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }
}
