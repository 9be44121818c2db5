package setwright.core.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.body.Body.Action;
import setwright.core.car.body.BodyMotion;
import setwright.core.car.model.CarModel;
import setwright.core.car.setup.SetupCatalogue;

/** Says what a prediction rests on that is assumed, where handbooks disagree, and what the model does not know. */
final class ChangeDoubts {
    /** Kerbs, roll and the tyres' own growth use up about this much (common practice). */
    private static final double LEAST_CLEARANCE_M = 0.005;

    private static final int ROUNDS = 4;

    private ChangeDoubts() {}

    /**
     * Returns the doubts of a change.
     *
     * @param setup     the sheet with the items changed
     * @param changes   the items
     * @param car       the changed car
     * @param topSpeed  the highest speed of the laps, m/s
     */
    static List<String> of(CarSheet setup, List<SetupChange> changes, CarModel car, double topSpeed) {
        List<String> out = new ArrayList<>(ofItems(changes));
        boolean geared = changes.stream()
                .anyMatch(change ->
                        change.item().equals("final_drive") || change.item().startsWith("gear_"));
        if (geared && setup.gearRatios().isEmpty()) {
            out.add("The gear ratios are not on the sheet: usual ones are assumed.");
        }
        if (geared && setup.revLimitRadPerS().isEmpty()) {
            out.add("The engine's speed limit is not on the sheet: a usual one is assumed.");
        }
        BodyMotion motion = atSpeed(car, topSpeed);
        clearance("front", setup, motion.riseFrontM(), topSpeed, out);
        clearance("rear", setup, motion.riseRearM(), topSpeed, out);
        return List.copyOf(out);
    }

    private static BodyMotion atSpeed(CarModel car, double speed) {
        BodyMotion motion = new BodyMotion(car.body());
        for (int round = 0; round < ROUNDS; round++) {
            motion.settle(new Action(
                    0.0,
                    0.0,
                    car.liftFrontN(speed, motion.riseFrontM(), motion.riseRearM()),
                    car.liftRearN(speed, motion.riseFrontM(), motion.riseRearM()),
                    0.0,
                    0.0));
        }
        return motion;
    }

    private static void clearance(String end, CarSheet setup, double rise, double speed, List<String> out) {
        OptionalDouble height = SetupCatalogue.find(end + "_ride_height")
                .map(kind -> SetupCatalogue.valueSi(setup, kind))
                .orElse(OptionalDouble.empty());
        if (height.isPresent() && height.getAsDouble() + rise < LEAST_CLEARANCE_M) {
            out.add(String.format(
                    Locale.ROOT,
                    "At the highest speed of these laps, %.0f km/h, the %s would stand %.0f mm above the road: it touches, and"
                            + " what touching does is not in the prediction.",
                    3.6 * speed,
                    end,
                    1000.0 * (height.getAsDouble() + rise)));
        }
    }

    private static List<String> ofItems(List<SetupChange> changes) {
        List<String> out = new ArrayList<>();
        for (SetupChange change : changes) {
            String item = change.item();
            if (item.contains("bump_stop")) {
                out.add(
                        "Bump stops act only where the travel reaches them; without suspension travel this is the model's word alone.");
            } else if (item.contains("bump") || item.contains("rebound")) {
                out.add("Handbooks disagree on what slow damping does on entry and exit; the track decides.");
            } else if (item.contains("pressure")) {
                out.add(
                        "The best pressure is taken to lie near the middle of the allowed range; the tyre maker and a pyrometer"
                                + " know better.");
            } else if (item.contains("camber")) {
                out.add(
                        "The best camber is taken to lie near the middle of the allowed range; tyre temperatures across the tread"
                                + " know better.");
            } else if (item.equals("diff_power_lock")) {
                out.add(
                        "On the throttle more locking first pushes, then lets both rear wheels slide together; where the sign turns,"
                                + " the track decides.");
            } else if (item.contains("wing") || item.contains("ride_height")) {
                out.add(
                        "What one step does to the downforce is assumed from cars of the kind, not measured on this one.");
            } else if (item.equals("brake_bias_front")) {
                out.add(
                        "A locking axle is not in the prediction: check for lock at the end of the hardest stop first.");
            }
        }
        return out.stream().distinct().toList();
    }
}
