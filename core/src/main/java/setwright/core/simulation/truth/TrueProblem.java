package setwright.core.simulation.truth;

import java.util.List;
import java.util.Set;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;

/**
 * How a faulty car differs most from the same car without the fault.
 *
 * @param phase           where the difference is largest
 * @param speed           in which corners
 * @param sign            which axle slips more than it should
 * @param acceptPhases    where the difference is about as large
 * @param acceptSpeeds    names that are right for the corners that show it
 * @param strengthRad     size of the largest difference, rad, &gt; 0
 * @param errorRad        standard error of the balance of that cell over the recorded laps, rad
 * @param weak            whether it is too small to count
 * @param corners         numbers of the corners that show at least half of it, ascending
 */
public record TrueProblem(
        Phase phase,
        SpeedRange speed,
        BalanceSign sign,
        Set<Phase> acceptPhases,
        Set<SpeedRange> acceptSpeeds,
        double strengthRad,
        double errorRad,
        boolean weak,
        List<Integer> corners) {
    public TrueProblem {
        acceptPhases = Set.copyOf(acceptPhases);
        acceptSpeeds = Set.copyOf(acceptSpeeds);
        corners = List.copyOf(corners);
    }

    /** Tells whether an answer names it. */
    public boolean accepts(BalanceSign balance, Phase inPhase, SpeedRange atSpeed) {
        return balance == sign && acceptPhases.contains(inPhase) && acceptSpeeds.contains(atSpeed);
    }
}
