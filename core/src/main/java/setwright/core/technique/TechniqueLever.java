package setwright.core.technique;

import java.util.List;
import java.util.Optional;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;

/**
 * One thing to do otherwise, with the laps that show what it does.
 *
 * @param rank        of the finding that it is to cure, from 1; 0 for a fault of the driving
 * @param finding     that finding
 * @param fault       the fault of the driving that it is to cure
 * @param lever       what to do otherwise
 * @param move        by how much, in the lever's unit with its sign; not beyond the better quarter of the driver's own passes
 * @param response    what was held against the lever
 * @param firstStep   what a habit itself asks for, whatever the laps show; empty for a finding, or where the habit tells no size
 * @param effect      change of the response by the move; empty where these laps do not show it
 * @param corners     where it acts, one entry each, ascending
 * @param laps        that do it already, the clearest first
 * @param against     that do it least
 * @param adjusted    level of false discoveries at which it is named; 1 where it could not be tested
 * @param strength    0..1: how sure the sign is, times the share of the lever's variation that is no reading error
 * @param weak        whether these laps do not prove it: they hardly vary, or what they show may be chance
 * @param varies      whether the lever varies by more over the laps than it can be read
 */
public record TechniqueLever(
        int rank,
        Optional<Finding> finding,
        Optional<DrivingFault> fault,
        Lever lever,
        double move,
        Response response,
        Optional<FirstStep> firstStep,
        Optional<Effect> effect,
        List<AtCorner> corners,
        List<Integer> laps,
        List<Integer> against,
        double adjusted,
        double strength,
        boolean weak,
        boolean varies) {
    public TechniqueLever {
        corners = List.copyOf(corners);
        laps = List.copyOf(laps);
        against = List.copyOf(against);
    }

    /** What is held against a lever. */
    public enum Response {
        /** Balance angle in the direction of the problem, rad. */
        BALANCE,
        /** Size of the rear's slides, rad. */
        SLIDE,
        /** How far the throttle is closed again, share of the pedal. */
        LIFT,
        /** Time from the corner's start to its end, s. */
        TIME
    }

    /**
     * A change of the response with its 95 % interval; negative is better.
     *
     * @param change  best estimate, with what reading errors of the lever take off it given back
     * @param low     lower end
     * @param high    upper end
     */
    public record Effect(double change, double low, double high) {}

    /**
     * The lever at one corner.
     *
     * @param corner  number
     * @param usual   median of the lever over the laps, in its unit
     * @param better  its better quarter
     * @param effect  of going from usual to better by this corner's slope, drawn toward the others; empty where it could not be told
     */
    public record AtCorner(int corner, double usual, double better, Optional<Effect> effect) {}
}
