package setwright.core.judgement;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding.Cause;

/*
 * Design note. Two habits upset any car: a brake that is trailed beyond what the tyres have left, and a throttle that is opened
 * too early and must be closed again. Where one of them is how somebody drives, a rear that steps out on the way in is his
 * before it is the car's; and where nothing of the car repeats, the habit is what to work on. An exit problem of the car stays
 * the car's: it makes drivers lift as well.
 */

/** Tells whether a habit of the driver explains what the car does. */
final class DriverCause {
    private static final Set<String> OF_THE_BRAKE = Set.of(HabitRule.TRAILED, HabitRule.HELD);
    private static final Set<Phase> WHILE_TRAILING = Set.of(Phase.ENTRY, Phase.MID);

    private DriverCause() {}

    /** Returns the finding, as the driver's where his braking explains it. */
    static Finding judge(Finding finding, List<DrivingFault> faults) {
        boolean rearOnTheWayIn = finding.balance() == BalanceSign.OVERSTEER && WHILE_TRAILING.contains(finding.phase());
        if (finding.cause() == Cause.DRIVER || !rearOnTheWayIn) {
            return finding;
        }
        return faults.stream()
                .filter(fault -> fault.habit() && OF_THE_BRAKE.contains(fault.kind()))
                .findFirst()
                .map(fault -> finding.ofTheDriver(String.format(
                        Locale.ROOT,
                        "In %d corners the %s: that unloads the rear on the way in, whatever the car. Technique comes first.",
                        fault.corners().size(),
                        fault.kind())))
                .orElse(finding);
    }

    /** Returns the habit that is to be worked on before anything else, when there is one. */
    static Optional<DrivingFault> habit(List<DrivingFault> faults) {
        return faults.stream()
                .filter(DrivingFault::habit)
                .filter(fault ->
                        OF_THE_BRAKE.contains(fault.kind()) || fault.kind().equals(HabitRule.TOO_EARLY))
                .findFirst();
    }

    static String words(DrivingFault habit) {
        return String.format(
                Locale.ROOT,
                "No problem of the car repeats, but a habit does: %s, in %d corners and %.0f %% of the passes there. It upsets any"
                        + " car, so it comes first.",
                habit.kind(),
                habit.corners().size(),
                100.0 * habit.lapShare());
    }
}
