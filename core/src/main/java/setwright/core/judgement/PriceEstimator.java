package setwright.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.numerics.Robust;

/*
 * Design note. What would the same driver gain if the problem were gone? He would use the tyres in that phase as he uses
 * them where the car lets him. The gap between the axle use of the passes that show the problem and his own good use of
 * the same phase (upper quartile over the lap) becomes a gap of speed by its root, and of time over the phase. It leaves
 * out what a higher speed carries on to the next straight, and counts what a slower line was chosen for, so the interval
 * is widened by a factor of two either way on top of the scatter between passes. A first version, to be checked against
 * simulated laps with the fault taken out.
 */

/** Puts a price on a problem. */
final class PriceEstimator {
    private static final int DRAWS = 400;
    private static final double GOOD_USE = 0.75;
    private static final double MODEL_FACTOR = Math.log(2.0) / 1.645;

    private PriceEstimator() {}

    /**
     * Prices a problem.
     *
     * @param all      every pass
     * @param showing  the passes at the corners that show it
     * @param phase    where it acts
     * @param laps     number of judged laps
     */
    static Finding.Price price(List<CornerPass> all, List<CornerPass> showing, Phase phase, int laps) {
        double good = Robust.quantile(
                all.stream()
                        .flatMap(pass -> pass.phase(phase).stream())
                        .mapToDouble(PriceEstimator::use)
                        .toArray(),
                GOOD_USE);
        List<Double> losses = new ArrayList<>();
        for (CornerPass pass : showing) {
            pass.phase(phase).ifPresent(balance -> losses.add(loss(balance, good)));
        }
        if (losses.isEmpty() || laps == 0) {
            return new Finding.Price(0.0, 0.0, 0.0);
        }
        double[] draws = new double[DRAWS];
        SplittableRandom random = new SplittableRandom(20_261_125L);
        for (int d = 0; d < DRAWS; d++) {
            double sum = 0.0;
            for (int i = 0; i < losses.size(); i++) {
                sum += losses.get(random.nextInt(losses.size()));
            }
            draws[d] = sum / laps * Math.exp(MODEL_FACTOR * normal(random));
        }
        double best = losses.stream().mapToDouble(Double::doubleValue).sum() / laps;
        return new Finding.Price(
                best, Math.min(best, Robust.quantile(draws, 0.05)), Math.max(best, Robust.quantile(draws, 0.95)));
    }

    private static double loss(PhaseBalance balance, double good) {
        double gap = Math.max(0.0, 1.0 - Math.sqrt(Math.min(1.0, use(balance) / good)));
        return balance.timeS() * gap;
    }

    private static double use(PhaseBalance balance) {
        return Math.max(balance.frontUse(), balance.rearUse());
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2.0 * Math.log(1.0 - random.nextDouble())) * Math.cos(2.0 * Math.PI * random.nextDouble());
    }
}
