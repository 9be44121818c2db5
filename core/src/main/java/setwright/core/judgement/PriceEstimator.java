package setwright.core.judgement;

import java.util.SplittableRandom;
import setwright.core.numerics.Robust;

/*
 * Design note. What would the same driver gain if the problem were gone? Where one axle slips more than the other by the
 * measured angle, the lazy axle leaves force unused; with both at their limit the car would corner faster by the root of
 * that. The gap of speed over the time of the phase is the price of one pass; the mean over all judged laps, the price of
 * a lap. It leaves out what a higher speed carries on to the next straight and what confidence is worth, and the tyre
 * curve is a guess, so the interval is widened by a factor of two either way on top of the scatter between passes. A first
 * version, to be checked against simulated laps with the fault taken out.
 */

/** Puts a price on a problem. */
final class PriceEstimator {
    private static final int DRAWS = 400;
    /** A factor of two at the ends of a 90 % interval. */
    private static final double MODEL_SPREAD = Math.log(2.0) / 1.645;

    private PriceEstimator() {}

    /**
     * Prices a problem.
     *
     * @param losses  time lost in each pass that shows it, s
     * @param laps    number of judged laps
     */
    static Finding.Price price(double[] losses, int laps) {
        if (losses.length == 0 || laps == 0) {
            return new Finding.Price(0.0, 0.0, 0.0);
        }
        double best = 0.0;
        for (double loss : losses) {
            best += loss / laps;
        }
        double[] draws = new double[DRAWS];
        SplittableRandom random = new SplittableRandom(20_261_125L);
        for (int d = 0; d < DRAWS; d++) {
            double sum = 0.0;
            for (int i = 0; i < losses.length; i++) {
                sum += losses[random.nextInt(losses.length)];
            }
            draws[d] = sum / laps * Math.exp(MODEL_SPREAD * normal(random));
        }
        return new Finding.Price(
                best, Math.min(best, Robust.quantile(draws, 0.05)), Math.max(best, Robust.quantile(draws, 0.95)));
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2.0 * Math.log(1.0 - random.nextDouble())) * Math.cos(2.0 * Math.PI * random.nextDouble());
    }
}
