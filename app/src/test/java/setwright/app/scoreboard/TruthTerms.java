package setwright.app.scoreboard;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import setwright.core.circuit.LapKind;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.Verdict;
import setwright.core.recording.Quantity;

/** The words of the truth files in the program's terms: the one place where both are known. */
public final class TruthTerms {

    private static final Map<String, Quantity> QUANTITIES = Map.ofEntries(
            entry("time", Quantity.TIME),
            entry("speed", Quantity.SPEED),
            entry("steer", Quantity.STEERING_WHEEL_ANGLE),
            entry("throttle", Quantity.THROTTLE),
            entry("brake", Quantity.BRAKE),
            entry("gear", Quantity.GEAR),
            entry("rpm", Quantity.ENGINE_SPEED),
            entry("ax", Quantity.LONGITUDINAL_ACCELERATION),
            entry("ay", Quantity.LATERAL_ACCELERATION),
            entry("az", Quantity.VERTICAL_ACCELERATION),
            entry("yaw", Quantity.YAW_RATE),
            entry("lap", Quantity.LAP_NUMBER),
            entry("beacon", Quantity.LAP_TRIGGER),
            entry("dist", Quantity.LAP_DISTANCE),
            entry("lat", Quantity.LATITUDE),
            entry("lon", Quantity.LONGITUDE),
            entry("x", Quantity.POSITION_X),
            entry("y", Quantity.POSITION_Y),
            entry("fuel", Quantity.FUEL_MASS),
            entry("w1", Quantity.WHEEL_SPEED_FRONT_LEFT),
            entry("w2", Quantity.WHEEL_SPEED_FRONT_RIGHT),
            entry("w3", Quantity.WHEEL_SPEED_REAR_LEFT),
            entry("w4", Quantity.WHEEL_SPEED_REAR_RIGHT),
            entry("sus1", Quantity.SUSPENSION_FRONT_LEFT),
            entry("sus2", Quantity.SUSPENSION_FRONT_RIGHT),
            entry("sus3", Quantity.SUSPENSION_REAR_LEFT),
            entry("sus4", Quantity.SUSPENSION_REAR_RIGHT),
            entry("T1", Quantity.TYRE_TEMPERATURE_FRONT_LEFT),
            entry("T2", Quantity.TYRE_TEMPERATURE_FRONT_RIGHT),
            entry("T3", Quantity.TYRE_TEMPERATURE_REAR_LEFT),
            entry("T4", Quantity.TYRE_TEMPERATURE_REAR_RIGHT));

    private static final Map<String, Set<LapKind>> LAP_KINDS = Map.of(
            "out", Set.of(LapKind.OUT),
            "in", Set.of(LapKind.IN),
            "flying", Set.of(LapKind.GOOD),
            "slow", Set.of(LapKind.SLOW),
            "mistake", Set.of(LapKind.MISTAKE, LapKind.OFF_TRACK),
            "spin", Set.of(LapKind.MISTAKE, LapKind.OFF_TRACK));

    private static final Map<String, Set<Verdict>> VERDICTS = Map.of(
            "setup", Set.of(Verdict.CHANGE_THE_CAR),
            "gearing", Set.of(Verdict.CHANGE_THE_CAR),
            "technique", Set.of(Verdict.COACH_THE_DRIVER),
            "inconsistent", Set.of(Verdict.COACH_THE_DRIVER),
            "none", Set.of(Verdict.NOTHING_TO_CHANGE),
            // One corner is no reason to change the car; whether the driver is sent there is a matter of taste.
            "one_corner", Set.of(Verdict.NOTHING_TO_CHANGE, Verdict.COACH_THE_DRIVER));

    private static final Set<String> CAR_IS_NOT_TO_BE_CHANGED =
            Set.of("none", "technique", "inconsistent", "one_corner");

    private TruthTerms() {}

    static Optional<Quantity> quantity(String word) {
        return Optional.ofNullable(QUANTITIES.get(word));
    }

    /** Returns the kinds that are right for a lap; none for a word that is not known. */
    static Set<LapKind> lapKinds(String word) {
        return LAP_KINDS.getOrDefault(word, Set.of());
    }

    /** Returns the verdicts that are right for a kind of case; none where the rules for scoring name none. */
    static Set<Verdict> verdicts(String kind) {
        return VERDICTS.getOrDefault(kind, Set.of());
    }

    /** Tells whether a call for a change of setup is a false alarm in this kind of case. */
    static boolean carIsRight(String kind) {
        return CAR_IS_NOT_TO_BE_CHANGED.contains(kind);
    }

    /**
     * Returns which findings name a trigger rightly; empty for words that the rules for scoring do not count.
     *
     * @param word    the truth's trigger
     * @param passes  the evidence: whether the brake was still on at turn-in
     */
    public static Optional<Predicate<Finding>> trigger(String word, List<CornerPass> passes) {
        return switch (word) {
            case "trail_brake" ->
                Optional.of(finding -> finding.trigger() == Trigger.BRAKE_RELEASE
                        || finding.trigger() == Trigger.TURN_IN && turnsInOnTheBrake(finding, passes));
            case "brake" -> anyOf(Trigger.BRAKE_APPLICATION);
            case "throttle" -> anyOf(Trigger.THROTTLE_PICK_UP, Trigger.THROTTLE_LIFT);
            case "entry_speed" -> anyOf(Trigger.TURN_IN, Trigger.BRAKE_RELEASE);
            case "bump" -> anyOf(Trigger.BUMP);
            case "steady" -> anyOf(Trigger.NONE);
            case "speed" ->
                Optional.of(finding -> finding.trigger() == Trigger.NONE && finding.speed() == SpeedRange.HIGH);
            default -> Optional.empty();
        };
    }

    private static Optional<Predicate<Finding>> anyOf(Trigger... right) {
        return Optional.of(finding -> List.of(right).contains(finding.trigger()));
    }

    private static boolean turnsInOnTheBrake(Finding finding, List<CornerPass> passes) {
        List<CornerPass> concerned = passes.stream()
                .filter(pass -> finding.corners().contains(pass.corner()))
                .toList();
        long braking = concerned.stream().filter(TruthTerms::turnsInOnTheBrake).count();
        return 2 * braking > concerned.size();
    }

    private static boolean turnsInOnTheBrake(CornerPass pass) {
        return pass.events().turnIn().isPresent()
                && pass.events().brakeOff().isPresent()
                && pass.events().brakeOff().getAsDouble()
                        > pass.events().turnIn().getAsDouble();
    }
}
