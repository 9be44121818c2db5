package setwright.core.identification;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import setwright.core.car.GripLimit;
import setwright.core.car.model.Moment;
import setwright.core.numerics.Robust;
import setwright.core.replay.DrivenLap;

/**
 * Understeer gradient of the laps: slope of the balance angle over lateral acceleration in gentle, steady cornering (ISO 4138
 * defines it on a constant radius; {@code B = delta - L r / v} takes the radius out).
 *
 * @param gradient  rad/(m/s²), positive: understeer
 * @param low       a tenth of the probability lies below
 * @param high      a tenth of the probability lies above
 * @param laps      how many told it
 */
record UndersteerGradient(double gradient, double low, double high, int laps) {
    /** Tyres are within a tenth of their linear range below about half of the limit. */
    private static final double MOST_USE = 0.5;

    private static final double LEAST_LATERAL = 1.0;
    private static final double MOST_ALONG = 1.5;
    private static final double MOST_YAW_RISE = 0.15;
    private static final int LEAST_MOMENTS = 15;

    /** Returns the gradient by lap and its spread; not a number with fewer than three laps that hold gentle cornering. */
    static UndersteerGradient of(List<DrivenLap> laps, GripLimit grip) {
        double[] slopes = laps.stream()
                .mapToDouble(lap -> slope(lap, grip))
                .filter(Double::isFinite)
                .toArray();
        if (slopes.length < 3) {
            return new UndersteerGradient(Double.NaN, Double.NaN, Double.NaN, slopes.length);
        }
        double mean = Arrays.stream(slopes).average().orElse(Double.NaN);
        double square = Arrays.stream(slopes)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        double error = Math.sqrt(square / (slopes.length - 1.0) / slopes.length);
        double width = new TDistribution(slopes.length - 1.0).inverseCumulativeProbability(0.9) * error;
        return new UndersteerGradient(mean, mean - width, mean + width, slopes.length);
    }

    private static double slope(DrivenLap lap, GripLimit grip) {
        double[] lateral = new double[lap.size()];
        double[] ones = new double[lap.size()];
        double[] balance = new double[lap.size()];
        int count = 0;
        for (int k = 0; k < lap.size(); k++) {
            lateral[k] = Math.abs(lap.moments().get(k).lateral());
            ones[k] = 1.0;
            balance[k] = gentle(lap.moments().get(k), grip) ? lap.balance()[k] : Double.NaN;
            count += Double.isFinite(balance[k]) ? 1 : 0;
        }
        return count < LEAST_MOMENTS
                ? Double.NaN
                : Robust.regress(new double[][] {lateral, ones}, balance).coefficient(0);
    }

    static boolean gentle(Moment moment, GripLimit grip) {
        double lateral = Math.abs(moment.lateral());
        return lateral > LEAST_LATERAL
                && lateral < MOST_USE * grip.at(moment.speed())
                && Math.abs(moment.forward()) < MOST_ALONG
                && Math.abs(moment.yawAcceleration()) < MOST_YAW_RISE;
    }
}
