package setwright.core.trial;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.core.replay.Pool;

/**
 * What is compared of one lap.
 *
 * @param number      of the lap in its run
 * @param timeS       lap time, s
 * @param sectorsS    times of its three parts, s; empty where they cannot be told
 * @param fuelKg      on board, as it was recorded; empty where it was not
 * @param balanceRad  by phase and class of corners: balance angle less what the same corner has on all laps of all runs, rad;
 *                    positive: understeer
 * @param targetRad   the same for the corners and the phase that the change is to cure; empty without a target
 */
public record TrialLap(
        int number,
        double timeS,
        List<Double> sectorsS,
        OptionalDouble fuelKg,
        Map<Pool, Double> balanceRad,
        OptionalDouble targetRad) {
    public TrialLap {
        sectorsS = List.copyOf(sectorsS);
        balanceRad = Map.copyOf(balanceRad);
    }

    /** A lap of which neither parts nor fuel are known. */
    public TrialLap(int number, double timeS, Map<Pool, Double> balanceRad, OptionalDouble targetRad) {
        this(number, timeS, List.of(), OptionalDouble.empty(), balanceRad, targetRad);
    }
}
