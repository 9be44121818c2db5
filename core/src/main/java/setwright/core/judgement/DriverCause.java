package setwright.core.judgement;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.core.handling.Phase;
import setwright.core.judgement.Finding.Cause;
import setwright.core.judgement.TimeSince.Difference;
import setwright.core.standing.SetupStanding;

/*
 * Design note. Two habits upset any car: a brake that is trailed beyond what the tyres have left, and a throttle that is opened
 * too early and must be closed again. Where one of them is how somebody drives, a rear that steps out on the way in is his
 * before it is the car's; and where nothing of the car repeats, the habit is what to work on. An exit problem of the car stays
 * the car's, as it makes drivers lift as well: unless the setup is known and has nothing that makes the rear loose there.
 *
 * Against a baseline the feet need not be wrong by themselves: who asks more of the tyres than when the car was in good order has made
 * whatever changed with it, either way, unless a part that was changed does the same.
 */

/** Tells whether a habit of the driver explains what the car does. */
final class DriverCause {
    private static final Set<String> UPSETTING_THROTTLE =
            Set.of(HabitRule.TOO_EARLY, HabitRule.TOO_MUCH, HabitRule.FURTHER);
    /** The habits that what is asked beyond the baseline shows as besides. */
    private static final Map<String, String> ALSO =
            Map.of(HabitRule.DEEPER, HabitRule.TRAILED, HabitRule.FURTHER, HabitRule.TOO_MUCH);

    private static final Set<Phase> WHILE_TRAILING = Set.of(Phase.ENTRY, Phase.MID);

    private DriverCause() {}

    /**
     * Returns the finding, as the driver's where his feet explain it.
     *
     * @param faults    his habits
     * @param since     what his feet ask that they did not ask in the baseline
     * @param lost      time that the laps lost since then
     * @param standing  what the setup does: a rear that it makes loose on the exit is the car's, whatever the foot does
     */
    static Finding judge(
            Finding finding,
            List<DrivingFault> faults,
            FeetSince since,
            Optional<Difference> lost,
            SetupStanding standing) {
        if (finding.cause() == Cause.DRIVER) {
            return finding;
        }
        boolean ordinary = !standing.isUnknown()
                && standing.untold().isEmpty()
                && finding.balance().direction() * standing.balanceRad(finding.pool()) < Yardstick.LEAST_RAD;
        Optional<DrivingFault> otherwise = ordinary ? since.behind(finding.phase()) : Optional.empty();
        if (otherwise.isPresent()) {
            return finding.ofTheDriver(
                    sinceThen(otherwise.get()) + (lost.isPresent() ? "" : " The laps are not clearly slower for it."));
        }
        if (finding.balance() != BalanceSign.OVERSTEER) {
            return finding;
        }
        if (WHILE_TRAILING.contains(finding.phase())) {
            return habit(faults, DrivingFault::byTheBrake)
                    .or(() -> everywhereThere(faults, finding))
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

    /** What the foot does in every corner in which the car does it is the nearer cause, also where it is no habit all round the lap. */
    private static Optional<DrivingFault> everywhereThere(List<DrivingFault> faults, Finding finding) {
        return faults.stream()
                .filter(DrivingFault::byTheBrake)
                .filter(fault -> fault.corners().containsAll(finding.corners()))
                .findFirst();
    }

    /** Tells whether a habit of his may stand behind a rear that lets go in a phase. */
    static boolean mayStandBehind(Phase phase, List<DrivingFault> faults) {
        return WHILE_TRAILING.contains(phase)
                ? habit(faults, DrivingFault::byTheBrake).isPresent()
                : phase == Phase.EXIT
                        && habit(faults, DrivingFault::byTheThrottle).isPresent();
    }

    private static String sinceThen(DrivingFault fault) {
        return String.format(
                Locale.ROOT,
                "In %d corners the %s, and no item that was changed since does this: the car is asked for more than it was."
                        + " Technique comes first; if the car still does it when driven as it was, it is the car.",
                fault.corners().size(),
                fault.kind());
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

    /**
     * Returns the faults of driving with those since the baseline that do harm: the balance changed with them, or the laps
     * became slower in the same car. A changed car that is slow also makes a driver open the throttle further. Each stands for the habit
     * that it is.
     */
    static List<DrivingFault> withHarmful(
            List<DrivingFault> habits, FeetSince since, List<Finding> findings, Grounds grounds) {
        boolean lost = grounds.lost().isPresent() && !grounds.losesTimeSinceAChange();
        List<DrivingFault> harmful = since.faults().stream()
                .filter(fault -> lost
                        || findings.stream()
                                .anyMatch(finding -> finding.cause() == Cause.DRIVER
                                        && since.behind(finding.phase())
                                                .filter(fault::equals)
                                                .isPresent()))
                .toList();
        Set<String> same = harmful.stream().map(fault -> ALSO.get(fault.kind())).collect(Collectors.toSet());
        return Stream.concat(harmful.stream(), habits.stream().filter(fault -> !same.contains(fault.kind())))
                .toList();
    }

    static String words(DrivingFault habit, Optional<Difference> lost) {
        if (habit.sinceTheBaseline() && lost.isPresent()) {
            return String.format(
                    Locale.ROOT,
                    "No problem of the car repeats, but the laps are %s than in the baseline, and in %d corners the %s. Technique comes"
                            + " first.",
                    lost.get().slower(),
                    habit.corners().size(),
                    habit.kind());
        }
        return String.format(
                Locale.ROOT,
                "No problem of the car repeats, but a habit does: %s, in %d corners and %.0f %% of the passes there. It upsets any"
                        + " car, so it comes first.",
                habit.kind(),
                habit.corners().size(),
                100.0 * habit.lapShare());
    }
}
