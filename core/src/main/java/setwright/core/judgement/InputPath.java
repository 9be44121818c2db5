package setwright.core.judgement;

import java.util.Map;
import setwright.core.car.DrivenAxle;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupPlace;
import setwright.core.handling.Phase;

/*
 * Design note. An item of the setup does nothing by itself: an input has to move what it acts on. A brake balance needs the brake, a
 * damper a body that pitches or rolls, the differential a torque or a difference of wheel speeds; bars, tyres and camber share out
 * lateral load, and where the axle that slips is also the driven one, the drive force takes from the same grip (friction
 * circle). Springs at the rear let the car squat on it. How much of that comes with the throttle the replay tells: what the item
 * does on the exit against what it does in the middle of the corner. All of it common practice; where two other inputs do
 * the same work, each gets half, as no source says more.
 */

/** Through which inputs an item of the setup reaches an axle. */
final class InputPath {
    private InputPath() {}

    /**
     * Returns the inputs that make an item show.
     *
     * @param kind    of the item
     * @param sign    which axle slips more than it should
     * @param phase   where it does
     * @param driven  wheels that the engine drives
     * @param power   share of what the item does under drive, against cornering alone, 0..1
     * @return shares, adding up to 1
     */
    static Map<Trigger, Double> of(SetupItemKind kind, BalanceSign sign, Phase phase, DrivenAxle driven, double power) {
        boolean front = kind.place() == SetupPlace.FRONT;
        SetupPlace slipping = sign == BalanceSign.UNDERSTEER ? SetupPlace.FRONT : SetupPlace.REAR;
        boolean driveToo = kind.place() == slipping && drives(driven, sign);
        return switch (kind.family()) {
            case BRAKE_BIAS_FRONT -> only(phase == Phase.BRAKING ? Trigger.BRAKE_APPLICATION : Trigger.BRAKE_RELEASE);
            // on a closed throttle: too little lets the rear turn in as the brake comes off, too much holds the nose
            // out
            case DIFF_COAST_LOCK, DIFF_PRELOAD ->
                only(sign == BalanceSign.UNDERSTEER ? Trigger.TURN_IN : Trigger.BRAKE_RELEASE);
            case DIFF_POWER_LOCK -> only(Trigger.THROTTLE_PICK_UP);
            case BUMP, BUMP_LOW, BUMP_HIGH ->
                front ? only(Trigger.TURN_IN) : both(Trigger.THROTTLE_PICK_UP, Trigger.TURN_IN);
            case REBOUND, REBOUND_LOW, REBOUND_HIGH ->
                both(front ? Trigger.THROTTLE_PICK_UP : Trigger.BRAKE_RELEASE, Trigger.TURN_IN);
            case TOE -> driveToo ? both(Trigger.TURN_IN, Trigger.THROTTLE_PICK_UP) : only(Trigger.TURN_IN);
            case SPRING -> driveToo || !front ? power(power) : only(Trigger.NONE);
            case BAR, TYRE_PRESSURE, CAMBER -> driveToo ? power(power) : only(Trigger.NONE);
            default -> only(Trigger.NONE);
        };
    }

    /** Tells whether the engine drives the axle that slips. */
    static boolean drives(DrivenAxle driven, BalanceSign sign) {
        return switch (driven) {
            case FRONT -> sign == BalanceSign.UNDERSTEER;
            case REAR -> sign == BalanceSign.OVERSTEER;
            case ALL -> true;
        };
    }

    private static Map<Trigger, Double> only(Trigger trigger) {
        return Map.of(trigger, 1.0);
    }

    private static Map<Trigger, Double> power(double share) {
        return Map.of(Trigger.THROTTLE_PICK_UP, share, Trigger.NONE, 1.0 - share);
    }

    private static Map<Trigger, Double> both(Trigger one, Trigger other) {
        return Map.of(one, 0.5, other, 0.5);
    }
}
