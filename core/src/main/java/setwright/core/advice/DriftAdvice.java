package setwright.core.advice;

import java.util.List;
import setwright.core.numerics.SlopeInterval;

/**
 * Balance or pace that moves over the stint.
 *
 * @param balance      of the balance angle, rad a lap; positive: towards understeer
 * @param balanceTau   Kendall's rank correlation of balance and lap
 * @param time         of the lap time, s a lap, with what burnt fuel gives taken out where it was recorded
 * @param fuelKg       burnt over the judged laps, kg; NaN where not recorded
 * @param span         laps from the first judged one to the last
 * @param balanceMoves whether the balance moves beyond chance and by more than is worth a change
 * @param timeMoves    whether the lap time does
 * @param laps         judged
 */
public record DriftAdvice(
        SlopeInterval balance,
        double balanceTau,
        SlopeInterval time,
        double fuelKg,
        int span,
        boolean balanceMoves,
        boolean timeMoves,
        List<Integer> laps)
        implements Advice {
    public DriftAdvice {
        laps = List.copyOf(laps);
    }

    @Override
    public Topic topic() {
        return Topic.DRIFT;
    }
}
