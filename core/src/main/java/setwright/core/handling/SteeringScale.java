package setwright.core.handling;

/**
 * How much further the road wheels seem to turn than gentle cornering needs.
 *
 * @param factor    1 when steering ratio and wheelbase fit the data; 2 when the ratio is entered half as large as it is
 * @param error     standard error of the factor; infinite when the laps cannot tell
 * @param takenOut  whether the steering was divided by it, because the ratio was only assumed
 */
public record SteeringScale(double factor, double error, boolean takenOut) {
    /** Beyond these the balance angles are of no use. */
    private static final double LEAST = 0.75;

    private static final double MOST = 1.35;
    /** What good sheets show; beyond it by more than chance a ratio or wheelbase is wrong. */
    private static final double FITS_LEAST = 0.95;

    private static final double FITS_MOST = 1.1;
    /** Standard errors of 99 in 100 cases: a good sheet that is refused costs all of the answer. */
    private static final double SURE = 2.58;
    /** What a ratio that was only assumed may be off by, as a share of it. */
    private static final double ASSUMED = 0.2;

    /** Tells whether the car sheet's steering ratio or wheelbase contradicts the laps. */
    public boolean contradicts() {
        boolean much = factor > MOST && factor - SURE * error > FITS_MOST;
        boolean little = factor < LEAST && factor + SURE * error < FITS_LEAST;
        return !takenOut && (much || little);
    }

    /** Tells whether a sheet with half or twice the car's ratio would be refused by such laps: their error grows with the factor. */
    public boolean checks() {
        double share = error / factor;
        return new SteeringScale(2.0, 2.0 * share, false).contradicts()
                && new SteeringScale(0.5, 0.5 * share, false).contradicts();
    }

    /** Returns what is to be taken out where the ratio is assumed: the laps tell as much of it as they know better than that. */
    SteeringScale out() {
        double told = ASSUMED * ASSUMED / (ASSUMED * ASSUMED + error * error);
        return new SteeringScale(1.0 + told * (factor - 1.0), Math.sqrt(1.0 - told) * ASSUMED, true);
    }
}
