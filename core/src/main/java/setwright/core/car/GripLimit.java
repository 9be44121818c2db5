package setwright.core.car;

import java.util.Arrays;
import setwright.core.car.sums.Gravity;
import setwright.core.numerics.Robust;

/**
 * The greatest acceleration that this car's tyres give, as far as the laps show it: {@code friction * (g + lift v^2)}.
 *
 * @param friction   grip over vertical load, without unit
 * @param liftPerM   downforce over mass and v², 1/m; 0 for a car without wings
 */
public record GripLimit(double friction, double liftPerM) {

    /**
     * Share of the grip that a driver uses where he uses most. Common practice puts good drivers above nine tenths; the
     * balance reference stays well away from the peak, where a small error of grip would turn into degrees of slip.
     */
    private static final double BEST_USE = 0.9;

    private static final double QUANTILE = 0.98;
    private static final double LEAST_SPEED_MPS = 12.0;
    private static final double LEAST_ACCELERATION = 2.0;
    private static final int STEPS = 60;
    /** Corners in a lap times laps are of this order; neighbouring samples tell the same. */
    private static final double INDEPENDENT_SAMPLES = 50.0;
    /** So many samples are looked at, evenly spread: hundreds for each independent one. */
    private static final int MOST_SAMPLES = 20_000;

    /** Returns vertical load over mass at a speed, m/s². */
    public double loadPerMass(double speedMps) {
        return Gravity.STANDARD_MPS2 + liftPerM * speedMps * speedMps;
    }

    /** Returns the greatest acceleration at a speed, m/s². */
    public double at(double speedMps) {
        return friction * loadPerMass(speedMps);
    }

    /**
     * Finds the limit that the laps show: a quantile regression of the combined acceleration on v², with what the user
     * said of the downforce as prior.
     *
     * @param speed      m/s, one value per judged sample
     * @param lateral    m/s²
     * @param forward    m/s²; only braking counts, as the engine and not the tyre limits driving
     * @param downforce  in the user's words
     */
    public static GripLimit fit(double[] speed, double[] lateral, double[] forward, Downforce downforce) {
        double[] fast = new double[speed.length];
        double[] used = new double[speed.length];
        int count = 0;
        int stride = Math.max(1, speed.length / MOST_SAMPLES);
        for (int i = 0; i < speed.length; i += stride) {
            double use = Math.sqrt(lateral[i] * lateral[i] + Math.min(forward[i], 0.0) * Math.min(forward[i], 0.0));
            if (speed[i] > LEAST_SPEED_MPS && use > LEAST_ACCELERATION) {
                fast[count] = speed[i];
                used[count] = use;
                count++;
            }
        }
        return fit(Arrays.copyOf(fast, count), Arrays.copyOf(used, count), downforce);
    }

    private static GripLimit fit(double[] speed, double[] combined, Downforce downforce) {
        double expected = expectedLift(downforce);
        if (expected == 0.0) {
            return new GripLimit(frictionAt(0.0, speed, combined) / BEST_USE, 0.0);
        }
        double spread = 0.5 * expected;
        double[] loss = new double[STEPS + 1];
        double[] frictions = new double[STEPS + 1];
        double least = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= STEPS; step++) {
            double lift = 2.5 * expected * step / STEPS;
            frictions[step] = frictionAt(lift, speed, combined);
            loss[step] = pinball(new GripLimit(frictions[step], lift), speed, combined);
            least = Math.min(least, loss[step]);
        }
        int best = 0;
        double bestScore = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= STEPS; step++) {
            double away = (2.5 * expected * step / STEPS - expected) / spread;
            double score = INDEPENDENT_SAMPLES * loss[step] / least + 0.5 * away * away;
            if (score < bestScore) {
                bestScore = score;
                best = step;
            }
        }
        return new GripLimit(frictions[best] / BEST_USE, 2.5 * expected * best / STEPS);
    }

    /** Downforce over weight at 50 m/s: about a quarter for a closed car with wings, seven tenths for an open one (our own orientation). */
    private static double expectedLift(Downforce downforce) {
        double shareOfWeightAt50 = switch (downforce) {
            case NONE -> 0.0;
            case MODERATE -> 0.25;
            case STRONG -> 0.7;
        };
        return shareOfWeightAt50 * Gravity.STANDARD_MPS2 / (50.0 * 50.0);
    }

    private static double frictionAt(double lift, double[] speed, double[] combined) {
        double[] ratio = new double[speed.length];
        for (int i = 0; i < speed.length; i++) {
            ratio[i] = combined[i] / (Gravity.STANDARD_MPS2 + lift * speed[i] * speed[i]);
        }
        double friction = Robust.quantile(ratio, QUANTILE);
        return Double.isFinite(friction) ? friction : 1.0;
    }

    private static double pinball(GripLimit limit, double[] speed, double[] combined) {
        double sum = 0.0;
        for (int i = 0; i < speed.length; i++) {
            double over = combined[i] - limit.at(speed[i]);
            sum += over > 0.0 ? QUANTILE * over : (QUANTILE - 1.0) * over;
        }
        return speed.length == 0 ? 1.0 : Math.max(sum / speed.length, 1.0e-9);
    }
}
