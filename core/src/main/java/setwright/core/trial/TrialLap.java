package setwright.core.trial;

import java.util.Map;
import java.util.OptionalDouble;
import setwright.core.replay.Pool;

/**
 * What is compared of one lap.
 *
 * @param number      of the lap in its run
 * @param timeS       lap time, s
 * @param balanceRad  by phase and class of corners: balance angle less what the same corner has on all laps of all runs, rad;
 *                    positive: understeer
 * @param targetRad   the same for the corners and the phase that the change is to cure; empty without a target
 */
public record TrialLap(int number, double timeS, Map<Pool, Double> balanceRad, OptionalDouble targetRad) {
    public TrialLap {
        balanceRad = Map.copyOf(balanceRad);
    }
}
