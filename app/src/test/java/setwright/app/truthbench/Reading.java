package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.core.recording.Quantity;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.intake.map.MapEntry;

/** Whether the columns that carry the judgement were taken for what they are, in their direction. */
final class Reading {
    private static final Set<Quantity> MATTER = Set.of(
            Quantity.SPEED,
            Quantity.STEERING_WHEEL_ANGLE,
            Quantity.YAW_RATE,
            Quantity.LATERAL_ACCELERATION,
            Quantity.THROTTLE,
            Quantity.BRAKE);

    private Reading() {}

    /** Returns what was read wrongly, in words; nothing when all is right or nothing was read. */
    static List<String> faults(CaseAnswer answer, LoggedTable table, LoggerPlan plan) {
        List<String> faults = new ArrayList<>();
        answer.intake().ifPresent(intake -> {
            for (LoggedColumn column : table.columns()) {
                if (MATTER.contains(column.quantity())) {
                    fault(column, intake.proposal().map().entry(column.quantity()), plan)
                            .ifPresent(faults::add);
                }
            }
        });
        return faults;
    }

    private static Optional<String> fault(LoggedColumn column, Optional<MapEntry> entry, LoggerPlan plan) {
        String words = column.quantity().words();
        if (entry.isEmpty()) {
            return Optional.of(words + " not found");
        }
        // units may stand behind the name in the header
        if (!entry.get().column().equals(column.name()) && !entry.get().column().startsWith(column.name() + " [")) {
            return Optional.of("another column taken for " + words);
        }
        boolean right = entry.get().sign() > 0 == left(column.quantity(), plan.layout());
        return right ? Optional.empty() : Optional.of(words + " in the wrong direction");
    }

    private static boolean left(Quantity quantity, LoggerPlan.Layout layout) {
        return switch (quantity) {
            case STEERING_WHEEL_ANGLE -> layout.steerLeft();
            case YAW_RATE -> layout.yawLeft();
            case LATERAL_ACCELERATION -> layout.acrossLeft();
            default -> true;
        };
    }
}
