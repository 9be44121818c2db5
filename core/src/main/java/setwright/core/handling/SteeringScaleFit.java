package setwright.core.handling;

import java.util.Arrays;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import setwright.core.numerics.Robust;

/*
 * Design note. Every balance angle hangs on the steering ratio and the wheelbase. In gentle cornering the road wheels turn
 * by delta = c L r / v + K ay: c is one when ratio and wheelbase are right, and the speeds of a lap vary enough to tell it
 * from the understeer gradient K. Measured: 0.95 to 1.10 on simulated laps of eight cars and 1.03 to 1.06 on a real
 * single-seater, which includes what steering compliance and sensors add.
 *
 * But K is no constant: wings change it with speed, tyres with how hard they are worked, and circuits without slow bends tell the two apart
 * badly. By the noise alone 18 of 320 simulated stints with a right sheet would be off by more than a quarter, "surely". So the
 * error has two parts. Bends that differ from each other: the samples of a stretch count as one (a sandwich over clusters, K.-Y. Liang and
 * S. L. Zeger, Biometrika 73 (1986) 13, value from memory). And what a K that changes over the speeds and with the use of the grip
 * would do to c; with 0.3 deg/g of it the errors of those 320 are as large as they are said to be (their ratio scatters by 0.9).
 */

/** Measures how much further the road wheels turn than gentle cornering needs. */
final class SteeringScaleFit {
    /** Change of the understeer gradient that may hide in a lap, rad per m/s²: over the middle of the speeds, and up to the hardest use. */
    private static final double GRADIENT_CHANGES = Math.toRadians(0.3) / 9.81;
    /** Shares of the grip limit between which cornering is gentle. */
    private static final double GENTLE_FROM = 0.05;

    private static final double GENTLE_TO = 0.6;
    /** Harder braking or driving shifts the balance by itself. */
    private static final double MOST_ALONG = 0.25;

    private static final int FEWEST_SAMPLES = 200;
    /** A stretch of road that counts as one observation: about a bend, m. */
    private static final double STRETCH_M = 100.0;

    /** The laps cannot tell. */
    private static final SteeringScale UNTOLD = new SteeringScale(1.0, Double.POSITIVE_INFINITY, false);

    private static final double LOW_SPEEDS = 0.1;
    private static final double HIGH_SPEEDS = 0.9;

    private final double[][] predictors;
    private final double[] steer;
    private final double[] use;
    private final double[] speedSquared;
    private final int[] stretch;

    private SteeringScaleFit(
            double[][] predictors, double[] steer, double[] use, double[] speedSquared, int[] stretch) {
        this.predictors = predictors;
        this.steer = steer;
        this.use = use;
        this.speedSquared = speedSquared;
        this.stretch = stretch;
    }

    /**
     * Measures the factor, one value per judged sample of each.
     *
     * @param steer    mean road wheel angle by the sheet's ratio, rad
     * @param needed   wheelbase times yaw rate over speed, rad
     * @param lateral  lateral acceleration, m/s²
     * @param forward  longitudinal acceleration, m/s²
     * @param limit    grip limit at the speed of each sample, m/s²
     * @param speed    m/s
     * @param station  place on the lap, m
     */
    static SteeringScale of(
            double[] steer,
            double[] needed,
            double[] lateral,
            double[] forward,
            double[] limit,
            double[] speed,
            double[] station) {
        double[] share = new double[steer.length];
        int[] gentle = new int[steer.length];
        int count = 0;
        for (int i = 0; i < steer.length; i++) {
            share[i] = Math.abs(lateral[i]) / limit[i];
            boolean coasting = Math.abs(forward[i]) < MOST_ALONG * limit[i];
            if (coasting
                    && share[i] > GENTLE_FROM
                    && share[i] < GENTLE_TO
                    && Double.isFinite(needed[i] + steer[i] + speed[i] + station[i])) {
                gentle[count++] = i;
            }
        }
        if (count < FEWEST_SAMPLES) {
            return UNTOLD;
        }
        double[][] predictors = new double[3][count];
        double[] turned = new double[count];
        double[] use = new double[count];
        double[] squared = new double[count];
        int[] stretch = new int[count];
        for (int k = 0; k < count; k++) {
            int i = gentle[k];
            predictors[0][k] = needed[i];
            predictors[1][k] = lateral[i];
            predictors[2][k] = 1.0;
            turned[k] = steer[i];
            use[k] = share[i];
            squared[k] = speed[i] * speed[i];
            stretch[k] = (int) Math.max(0.0, station[i] / STRETCH_M);
        }
        try {
            return new SteeringScaleFit(predictors, turned, use, squared, stretch).measure();
        } catch (IllegalArgumentException sameSpeed) {
            return UNTOLD;
        }
    }

    /** @throws IllegalArgumentException when all is driven at one speed, so that ratio and gradient are the same */
    private SteeringScale measure() {
        Robust.Fit fit = Robust.regress(predictors, steer);
        double[] weights = new double[steer.length];
        double[] residuals = new double[steer.length];
        for (int i = 0; i < steer.length; i++) {
            residuals[i] = steer[i];
            for (int j = 0; j < predictors.length; j++) {
                residuals[i] -= fit.coefficient(j) * predictors[j][i];
            }
            weights[i] = fit.weight(residuals[i]);
        }
        DecompositionSolver solver = new LUDecomposition(moments(weights)).getSolver();
        if (!solver.isNonSingular()) {
            return UNTOLD;
        }
        RealMatrix inverse = solver.getInverse();
        double factor = fit.coefficient(0);
        double gradient = Math.max(1.0, Math.abs(factor))
                * GRADIENT_CHANGES
                * Math.hypot(
                        inverse.operate(sums(weights, overSpeeds()))[0], inverse.operate(sums(weights, withUse()))[0]);
        return new SteeringScale(factor, Math.hypot(gradient, bends(inverse, weights, residuals)), false);
    }

    private RealMatrix moments(double[] weights) {
        double[][] moments = new double[predictors.length][];
        for (int j = 0; j < predictors.length; j++) {
            moments[j] = sums(weights, predictors[j]);
        }
        return MatrixUtils.createRealMatrix(moments);
    }

    /** What a signal has in common with each predictor. */
    private double[] sums(double[] weights, double[] signal) {
        double[] sums = new double[predictors.length];
        for (int j = 0; j < sums.length; j++) {
            for (int i = 0; i < signal.length; i++) {
                sums[j] += weights[i] * predictors[j][i] * signal[i];
            }
        }
        return sums;
    }

    /** What a gradient would add that grows with the square of the speed, by one over the middle of the speeds. */
    private double[] overSpeeds() {
        double low = Robust.quantile(speedSquared, LOW_SPEEDS);
        double width = Robust.quantile(speedSquared, HIGH_SPEEDS) - low;
        double[] added = new double[steer.length];
        for (int i = 0; i < added.length; i++) {
            added[i] = width > 0.0 ? (speedSquared[i] - low) / width * predictors[1][i] : 0.0;
        }
        return added;
    }

    /** The same that grows with the square of the use, by one up to the hardest that is gentle. */
    private double[] withUse() {
        double[] added = new double[steer.length];
        for (int i = 0; i < added.length; i++) {
            double share = use[i] / GENTLE_TO;
            added[i] = share * share * predictors[1][i];
        }
        return added;
    }

    /** Standard error of the factor from how far the stretches of the lap go their own way. */
    private double bends(RealMatrix inverse, double[] weights, double[] residuals) {
        int count = Arrays.stream(stretch).max().orElse(0) + 1;
        double[][] scores = new double[count][predictors.length];
        for (int i = 0; i < steer.length; i++) {
            for (int j = 0; j < predictors.length; j++) {
                scores[stretch[i]][j] += weights[i] * residuals[i] * predictors[j][i];
            }
        }
        double sum = 0.0;
        int told = 0;
        for (double[] score : scores) {
            double moved = inverse.operate(score)[0];
            sum += moved * moved;
            told += moved != 0.0 ? 1 : 0;
        }
        return told < 2 ? Double.POSITIVE_INFINITY : Math.sqrt(sum * told / (told - 1.0));
    }
}
