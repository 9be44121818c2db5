package setwright.core.handling;

import setwright.core.numerics.Robust;

/*
 * Design note. Every balance angle hangs on the steering ratio and the wheelbase. In gentle cornering the road wheels turn
 * by delta = c L r / v + K ay: c is one when ratio and wheelbase are right, and the speeds of a lap vary enough to tell it
 * from the understeer gradient. Measured: 0.95 to 1.10 on simulated laps of eight cars and 1.03 to 1.06 on a real
 * single-seater, which includes what steering compliance and sensors add.
 */

/**
 * How much further the road wheels seem to turn than gentle cornering needs.
 *
 * @param factor    1 when steering ratio and wheelbase fit the data; 2 when the ratio is entered half as large as it is
 * @param error     standard error of the factor; infinite when the laps cannot tell
 * @param takenOut  whether the steering was divided by it, because the ratio was only assumed
 */
public record SteeringScale(double factor, double error, boolean takenOut) {
    /** Beyond these a ratio or wheelbase is wrong; well outside what good sheets show, well inside a factor of two. */
    private static final double LEAST = 0.75;

    private static final double MOST = 1.35;
    private static final double SURE = 0.1;
    /** Shares of the grip limit between which cornering is gentle. */
    private static final double GENTLE_FROM = 0.05;

    private static final double GENTLE_TO = 0.6;
    /** Harder braking or driving shifts the balance by itself. */
    private static final double MOST_ALONG = 0.25;

    private static final int FEWEST_SAMPLES = 200;
    /** Neighbouring samples of a filtered signal tell the same: about a third of a second is one observation. */
    private static final double SAMPLES_PER_OBSERVATION = 17.0;

    /** Tells whether the car sheet's steering ratio or wheelbase contradicts the laps. */
    public boolean contradicts() {
        return !takenOut && error < SURE && !(factor > LEAST && factor < MOST);
    }

    SteeringScale out() {
        return new SteeringScale(factor, error, true);
    }

    /**
     * Measures the factor.
     *
     * @param steer      mean road wheel angle by the sheet's ratio, rad, one value per judged sample
     * @param needed     wheelbase times yaw rate over speed, rad
     * @param lateral    lateral acceleration, m/s²
     * @param forward    longitudinal acceleration, m/s²
     * @param limit      grip limit at the speed of each sample, m/s²
     */
    static SteeringScale of(double[] steer, double[] needed, double[] lateral, double[] forward, double[] limit) {
        double[] ones = new double[steer.length];
        double[] y = new double[steer.length];
        int count = 0;
        for (int i = 0; i < steer.length; i++) {
            double use = Math.abs(lateral[i]) / limit[i];
            boolean coasting = Math.abs(forward[i]) < MOST_ALONG * limit[i];
            boolean gentle = coasting && use > GENTLE_FROM && use < GENTLE_TO && Double.isFinite(needed[i]);
            ones[i] = 1.0;
            y[i] = gentle ? steer[i] : Double.NaN;
            count += gentle ? 1 : 0;
        }
        if (count < FEWEST_SAMPLES) {
            return new SteeringScale(1.0, Double.POSITIVE_INFINITY, false);
        }
        Robust.Fit fit = Robust.regress(new double[][] {needed, lateral, ones}, y);
        return new SteeringScale(fit.coefficient(0), fit.standardError(0) * Math.sqrt(SAMPLES_PER_OBSERVATION), false);
    }
}
