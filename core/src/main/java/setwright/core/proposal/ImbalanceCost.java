package setwright.core.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.BalanceBelief;
import setwright.core.judgement.BalanceBelief.PoolEstimate;
import setwright.core.judgement.Yardstick;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.replay.Effect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

/*
 * Design note. Gain in the target less harm elsewhere, in one currency: the time that an imbalance costs where it is, expected over what
 * is believed of the balance and over what the change would do to it. A change that helps the target and upsets what was
 * right pays for both; one whose effect is not sure gains less, since the cost bends upward.
 */

/** What an imbalance costs, phase by phase and class by class of corners. */
final class ImbalanceCost {
    private static final int POINTS = 15;

    private static final double[] NORMAL = normal();

    private final List<Cell> cells;

    private record Cell(Pool pool, double timeS, double meanRad, double deviationRad) {}

    ImbalanceCost(BalanceBelief belief, List<CornerPass> passes, int laps) {
        this.cells = new ArrayList<>();
        for (PoolEstimate found : belief.pools()) {
            double time = passes.stream()
                    .filter(pass -> found.pool().takes(pass.speedClass()))
                    .flatMap(pass -> pass.phase(found.pool().phase()).stream())
                    .mapToDouble(PhaseBalance::timeS)
                    .sum();
            cells.add(new Cell(
                    found.pool(),
                    time / Math.max(1, laps),
                    found.estimate().meanRad(),
                    found.estimate().deviationRad()));
        }
    }

    /**
     * Returns what a change gains in each pool.
     *
     * @param prediction  of the change
     * @param factor      by which its effects on the balance are multiplied, for the same item turned by another amount
     */
    List<PoolGain> gains(Prediction prediction, double factor) {
        List<PoolGain> gains = new ArrayList<>();
        for (Cell cell : cells) {
            Optional<Effect> effect =
                    prediction.balance(cell.pool().phase(), cell.pool().speedClass());
            double moved = factor * effect.map(Effect::central).orElse(0.0);
            double spread = Math.abs(factor) * effect.map(Effect::deviation).orElse(0.0);
            gains.add(new PoolGain(
                    cell.pool(),
                    cell.timeS()
                            * (expected(cell.meanRad(), cell.deviationRad())
                                    - expected(cell.meanRad() + moved, Math.hypot(cell.deviationRad(), spread)))));
        }
        return gains;
    }

    /** Expected share of time lost to an imbalance that is known so well. */
    private static double expected(double mean, double deviation) {
        double sum = 0.0;
        for (double z : NORMAL) {
            sum += Yardstick.timeShare(Math.abs(mean + deviation * z));
        }
        return sum / POINTS;
    }

    private static double[] normal() {
        NormalDistribution normal = new NormalDistribution();
        double[] points = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            points[i] = normal.inverseCumulativeProbability((i + 0.5) / POINTS);
        }
        return points;
    }
}
