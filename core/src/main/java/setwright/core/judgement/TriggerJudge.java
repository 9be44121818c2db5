package setwright.core.judgement;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.core.car.DrivenAxle;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.Slide;
import setwright.core.judgement.TriggerEvidence.Witness;
import setwright.core.standing.ItemStanding;
import setwright.core.standing.SetupStanding;

/** Gathers what speaks for each trigger of a problem. */
final class TriggerJudge {
    /**
     * Counts for an item that stands out but whose effect the replay hardly shows, rad: dampers act for a moment only. A third
     * of the least level that is worth a change; from a fifth to ten times of it the tuning cases are told as well.
     */
    private static final double LEAST_EFFECT_RAD = Yardstick.LEAST_RAD / 3.0;
    /** Below it an item counts as ordinary: one of two dozen that stand near the middle would be. */
    private static final double STANDS_OUT = 0.3;
    /** An item that does the opposite by more than this does not make the problem, rad. */
    private static final double OPPOSITE_RAD = Math.toRadians(0.02);

    private static final double BRAKED = 0.05;

    private final List<CornerPass> passes;
    private final BalanceBelief belief;
    private final SetupStanding standing;
    private final FeetSince since;
    private final DrivenAxle driven;

    TriggerJudge(
            List<CornerPass> passes, BalanceBelief belief, SetupStanding standing, FeetSince since, DrivenAxle driven) {
        this.passes = List.copyOf(passes);
        this.belief = belief;
        this.standing = standing;
        this.since = since;
        this.driven = driven;
    }

    /** Returns what speaks for the triggers of a level of balance. */
    TriggerEvidence ofLevel(Phase phase, SpeedRange speed, BalanceSign sign) {
        Map<Witness, Map<Trigger, Double>> shares = new EnumMap<>(Witness.class);
        setup(phase, speed, sign).ifPresent(found -> shares.put(Witness.SETUP, found));
        phases(speed, sign).ifPresent(found -> shares.put(Witness.PHASE, found));
        since.trigger(phase).ifPresent(found -> shares.put(Witness.FEET, Map.of(found, 1.0)));
        return new TriggerEvidence(shares);
    }

    /**
     * Returns what speaks for the triggers of slides of the rear.
     *
     * @param byCorner  slides of one phase, a list for each corner
     * @param ofTheCar  whether the setup has a say
     */
    TriggerEvidence ofSlides(Phase phase, SpeedRange speed, Collection<List<Slide>> byCorner, boolean ofTheCar) {
        Map<Witness, Map<Trigger, Double>> shares = new EnumMap<>(Witness.class);
        if (ofTheCar) {
            setup(phase, speed, BalanceSign.OVERSTEER).ifPresent(found -> shares.put(Witness.SETUP, found));
        }
        shares.put(Witness.MOVED, InputMovement.shares(byCorner));
        since.trigger(phase).ifPresent(found -> shares.put(Witness.FEET, Map.of(found, 1.0)));
        return new TriggerEvidence(shares);
    }

    private Optional<Map<Trigger, Double>> setup(Phase phase, SpeedRange speed, BalanceSign sign) {
        Map<Trigger, Double> sum = new EnumMap<>(Trigger.class);
        for (ItemStanding item : standing.items()) {
            double weight = weight(item, speed, sign);
            if (weight > 0.0) {
                SetupCatalogue.find(item.item().name())
                        .map(kind -> InputPath.of(kind, sign, phase, driven, power(item, speed, sign)))
                        .ifPresent(path ->
                                path.forEach((trigger, share) -> sum.merge(trigger, weight * share, Double::sum)));
            }
        }
        return normalised(sum);
    }

    /** What an item does to the balance, in the phase where it does most. */
    private static double weight(ItemStanding item, SpeedRange speed, BalanceSign sign) {
        if (item.unusual() < STANDS_OUT) {
            return 0.0;
        }
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (Phase phase : BalanceBelief.PHASES) {
            double effect = sign.direction() * item.balanceRad(speed.pool(phase));
            most = Math.max(most, effect);
            least = Math.min(least, effect);
        }
        return most <= 0.0 && least < -OPPOSITE_RAD ? 0.0 : item.unusual() * (LEAST_EFFECT_RAD + Math.max(0.0, most));
    }

    /** What it does on the exit as a share of that and of what it does in the middle; half where it does neither. */
    private static double power(ItemStanding item, SpeedRange speed, BalanceSign sign) {
        double middle = Math.max(0.0, sign.direction() * item.balanceRad(speed.pool(Phase.MID)));
        double exit = Math.max(0.0, sign.direction() * item.balanceRad(speed.pool(Phase.EXIT)));
        return middle + exit > 0.0 ? exit / (middle + exit) : 0.5;
    }

    /** What is wrong by as much in every phase is set off by nothing that the driver does; what one has beyond that, by what he does there. */
    private Optional<Map<Trigger, Double>> phases(SpeedRange speed, BalanceSign sign) {
        double entry = wrong(Phase.ENTRY, speed, sign);
        double middle = wrong(Phase.MID, speed, sign);
        double exit = wrong(Phase.EXIT, speed, sign);
        double everywhere = Math.min(entry, Math.min(middle, exit));
        double braked = braked();
        Map<Trigger, Double> sum = new EnumMap<>(Trigger.class);
        sum.put(Trigger.BRAKE_RELEASE, (entry - everywhere) * braked);
        sum.put(Trigger.TURN_IN, (entry - everywhere) * (1.0 - braked));
        sum.put(Trigger.NONE, middle + 2.0 * everywhere);
        sum.put(Trigger.THROTTLE_PICK_UP, exit - everywhere);
        return normalised(sum);
    }

    private double wrong(Phase phase, SpeedRange speed, BalanceSign sign) {
        double limit = sign.direction() * belief.atTheLimit(phase, speed);
        return limit > 0.0 ? limit : 0.0; // not a number where no corner has the phase
    }

    private static Optional<Map<Trigger, Double>> normalised(Map<Trigger, Double> sum) {
        double all = sum.values().stream().mapToDouble(share -> share).sum();
        if (!(all > 0.0)) {
            return Optional.empty();
        }
        sum.replaceAll((trigger, share) -> share / all);
        return Optional.of(sum);
    }

    private double braked() {
        long braked =
                passes.stream().filter(pass -> pass.brakeAtTurnIn() > BRAKED).count();
        return braked / Math.max(1.0, passes.size());
    }
}
