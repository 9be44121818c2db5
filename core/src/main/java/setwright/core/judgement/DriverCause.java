package setwright.core.judgement;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding.Cause;
import setwright.core.standing.SetupStanding;

/*
 * Design note. Two habits upset any car: a brake that is trailed beyond what the tyres have left, and a throttle that is opened
 * too early and must be closed again. Where one of them is how somebody drives, a rear that steps out on the way in is his
 * before it is the car's; and where nothing of the car repeats, the habit is what to work on. An exit problem of the car stays
 * the car's, as it makes drivers lift as well: unless the setup is known and has nothing that makes the rear loose there.
 */

/** Tells whether a habit of the driver explains what the car does. */
final class DriverCause {
    private static final Set<String> UPSETTING_THROTTLE = Set.of(HabitRule.TOO_EARLY, HabitRule.TOO_MUCH);
    private static final Set<Phase> WHILE_TRAILING = Set.of(Phase.ENTRY, Phase.MID);

    private DriverCause() {}

    /**
     * Returns the finding, as the driver's where his feet explain it.
     *
     * @param standing  what the setup does: a rear that it makes loose on the exit is the car's, whatever the foot does
     */
    static Finding judge(Finding finding, List<DrivingFault> faults, SetupStanding standing) {
        if (finding.cause() == Cause.DRIVER || finding.balance() != BalanceSign.OVERSTEER) {
            return finding;
        }
        boolean ordinary = !standing.isUnknown()
                && standing.untold().isEmpty()
                && standing.balanceRad(finding.pool()) > -LevelPattern.LEAST_RAD;
        if (WHILE_TRAILING.contains(finding.phase())) {
            return habit(faults, DrivingFault::byTheBrake)
                    .map(fault -> finding.ofTheDriver(
                            because(fault, "that unloads the rear on the way in, whatever the car")))
                    .orElse(finding);
        }
        return finding.phase() == Phase.EXIT && ordinary
                ? habit(faults, DrivingFault::byTheThrottle)
                        .map(
                                fault -> finding.ofTheDriver(
                                        because(
                                                fault,
                                                "that asks too much of the driven tyres, and no item of the setup makes the rear loose there")))
                        .orElse(finding)
                : finding;
    }

    private static Optional<DrivingFault> habit(List<DrivingFault> faults, Predicate<DrivingFault> of) {
        return faults.stream().filter(fault -> fault.habit() && of.test(fault)).findFirst();
    }

    private static String because(DrivingFault fault, String why) {
        return String.format(
                Locale.ROOT,
                "In %d corners the %s: %s. Technique comes first.",
                fault.corners().size(),
                fault.kind(),
                why);
    }

    /** Returns the habit that is to be worked on before anything else, when there is one. */
    static Optional<DrivingFault> habit(List<DrivingFault> faults) {
        return faults.stream()
                .filter(DrivingFault::habit)
                .filter(fault -> fault.byTheBrake() || UPSETTING_THROTTLE.contains(fault.kind()))
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
