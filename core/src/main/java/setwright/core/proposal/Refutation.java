package setwright.core.proposal;

import java.util.Optional;
import setwright.core.replay.Effect;

/**
 * Measured changes of the target's balance that a prediction does not bear: those outside its interval, widened by what the laps leave open.
 *
 * @param belowRad  less than this refutes it, rad; positive: toward understeer
 * @param aboveRad  more than this refutes it, rad
 * @param laps      good laps before and as many after
 */
public record Refutation(double belowRad, double aboveRad, int laps) {
    /** Standard errors to either side within which four fifths of a normal quantity lie, as of the prediction itself. */
    private static final double FOUR_FIFTHS = 1.28;

    /**
     * Returns it; empty where the driver's scatter is not known.
     *
     * @param predicted   change of the balance, rad
     * @param scatterRad  of that balance from lap to lap, standard deviation, rad
     * @param laps        a side, &gt;= 1
     */
    static Optional<Refutation> of(Effect predicted, double scatterRad, int laps) {
        double open = FOUR_FIFTHS * scatterRad * Math.sqrt(2.0 / laps);
        return Double.isFinite(open)
                ? Optional.of(new Refutation(predicted.low() - open, predicted.high() + open, laps))
                : Optional.empty();
    }

    /** Tells whether a measured change refutes the prediction. */
    public boolean refutes(double measuredRad) {
        return measuredRad < belowRad || measuredRad > aboveRad;
    }
}
