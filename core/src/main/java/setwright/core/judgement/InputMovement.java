package setwright.core.judgement;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.core.handling.Slide;
import setwright.core.numerics.Robust;

/*
 * Design note. Each slide is asked which input moved in the half second before it, as a share of the pedal's or the
 * wheel's range, and whether there is a physical path from that input to the axle that let go: a released brake gives
 * load back to the rear only after the front has used it, a throttle loads and drives the driven axle, a turn-in builds
 * yaw. The answers are averaged over the slides, so that one odd lap cannot decide.
 */

/** Tells which inputs moved before slides. */
final class InputMovement {
    /** How sharply the largest movement wins; 4 turns a lead of half a pedal into odds of seven to one. */
    private static final double SHARPNESS = 4.0;

    private static final double NOTHING_MOVED = 0.25;
    /** Turning in is over by then (common practice: half a second to a second of steering). */
    private static final double TURN_IN_S = 0.8;

    /** A fast turn-in of the road wheels, rad/s: full lock of a corner in half a second. */
    private static final double QUICK_HANDS = 0.15;

    /** A bump lies still: slides that it causes come within this distance of each other lap after lap. */
    private static final double SAME_PLACE_M = 2.0;

    private static final int FEWEST_FOR_A_PLACE = 4;
    private static final double BUMP_SCORE = 0.6;
    /** A pedal or wheel that moved by less than this share did nothing. */
    private static final double QUIET = 0.05;

    private InputMovement() {}

    /**
     * Averages over slides.
     *
     * @param byCorner  slides of one phase, a list for each corner
     * @return share of each trigger, adding up to 1
     */
    static Map<Trigger, Double> shares(Collection<List<Slide>> byCorner) {
        int count = byCorner.stream().mapToInt(List::size).sum();
        Map<Trigger, Double> sum = new EnumMap<>(Trigger.class);
        for (Trigger trigger : Trigger.values()) {
            sum.put(trigger, trigger == Trigger.NONE && count == 0 ? 1.0 : 0.0);
        }
        for (List<Slide> here : byCorner) {
            boolean samePlace = samePlace(here);
            for (Slide slide : here) {
                Map<Trigger, Double> scores = scores(slide.inputs(), samePlace);
                double total = scores.values().stream()
                        .mapToDouble(score -> Math.exp(SHARPNESS * score))
                        .sum();
                scores.forEach((trigger, score) ->
                        sum.merge(trigger, Math.exp(SHARPNESS * score) / total / count, Double::sum));
            }
        }
        return sum;
    }

    private static boolean samePlace(List<Slide> slides) {
        double[] stations = slides.stream().mapToDouble(Slide::stationM).toArray();
        return stations.length >= FEWEST_FOR_A_PLACE && Robust.scaledMad(stations) < SAME_PLACE_M;
    }

    private static Map<Trigger, Double> scores(Slide.Inputs inputs, boolean samePlace) {
        Map<Trigger, Double> scores = new EnumMap<>(Trigger.class);
        boolean turning = inputs.sinceTurnInS() < TURN_IN_S;
        scores.put(Trigger.BRAKE_APPLICATION, inputs.brakeRise() - inputs.brakeFall());
        // a trailed brake counts while it is being given back, more so with what is still on
        scores.put(
                Trigger.BRAKE_RELEASE,
                inputs.brakeFall() - inputs.brakeRise() + (inputs.brakeFall() > 0.03 ? inputs.brake() + 0.25 : 0.0));
        scores.put(
                Trigger.TURN_IN, turning ? Math.min(Math.max(inputs.steerRate() / QUICK_HANDS, 0.0), 1.0) * 0.5 : 0.0);
        scores.put(Trigger.THROTTLE_PICK_UP, inputs.throttleRise() - inputs.throttleFall());
        // the throttle is always closed before the brake is pressed: a lift counts only without one
        boolean braked = inputs.brake() > 0.05 || inputs.brakeRise() > 0.1 || inputs.brakeFall() > 0.1;
        scores.put(Trigger.THROTTLE_LIFT, braked ? 0.0 : inputs.throttleFall() - inputs.throttleRise());
        // a steady driver brakes at the same place too: a bump is believed only when no input moved
        boolean quiet = scores.values().stream().allMatch(score -> score < QUIET);
        scores.put(Trigger.BUMP, samePlace && quiet ? BUMP_SCORE : 0.0);
        scores.put(Trigger.NONE, NOTHING_MOVED);
        // a channel that was not recorded did not move
        scores.replaceAll((trigger, score) -> Double.isNaN(score) ? 0.0 : score);
        return scores;
    }
}
