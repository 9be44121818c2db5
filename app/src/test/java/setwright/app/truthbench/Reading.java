package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.intake.Intake;
import setwright.intake.map.MapEntry;

/** Whether columns that carry the judgement were taken for what they are, in their direction. */
final class Reading {
    private static final Map<Quantity, String> COLUMNS = Map.of(
            Quantity.SPEED, "speed",
            Quantity.STEERING_WHEEL_ANGLE, "steering",
            Quantity.YAW_RATE, "yaw_rate",
            Quantity.LATERAL_ACCELERATION, "acc_lateral",
            Quantity.THROTTLE, "throttle");

    private Reading() {}

    /** Returns what was read wrongly, in words; nothing when all is right. */
    static List<String> faults(Intake intake, LoggerPlan plan) {
        List<String> faults = new ArrayList<>();
        COLUMNS.forEach((quantity, name) -> {
            Optional<MapEntry> entry = intake.proposal().map().entry(quantity);
            boolean recorded = !name.equals("acc_lateral")
                    || plan.channels() != setwright.core.simulation.logger.ChannelSet.MINIMAL;
            if (recorded && entry.isEmpty()) {
                faults.add(name + " not used");
            } else if (entry.isPresent() && !entry.get().column().startsWith(name)) {
                faults.add(entry.get().column() + " taken for " + quantity.words());
            } else if (entry.isPresent() && (entry.get().sign() < 0) != counted(quantity, plan)) {
                faults.add(name + " in the wrong direction");
            }
        });
        return faults;
    }

    private static boolean counted(Quantity quantity, LoggerPlan plan) {
        return switch (quantity) {
            case STEERING_WHEEL_ANGLE -> plan.steerRight();
            case YAW_RATE -> plan.yawRight();
            case LATERAL_ACCELERATION -> plan.lateralRight();
            default -> false;
        };
    }
}
