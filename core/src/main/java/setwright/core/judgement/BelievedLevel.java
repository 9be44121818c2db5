package setwright.core.judgement;

import org.hipparchus.distribution.continuous.NormalDistribution;
import setwright.core.handling.Phase;

/**
 * What is believed of the balance in one place, beyond a healthy car's.
 *
 * @param phase         where in the corner
 * @param speed         in which corners
 * @param meanRad       expected, rad; positive: understeer
 * @param deviationRad  standard deviation, rad, &gt; 0
 * @param measuredRad   what the laps alone show over the reference, rad
 */
public record BelievedLevel(Phase phase, SpeedRange speed, double meanRad, double deviationRad, double measuredRad) {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Returns the axle that it points to. */
    public BalanceSign sign() {
        return meanRad >= 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
    }

    /** Returns the probability that it is so, and by what is worth a change. */
    public double probability() {
        return NORMAL.cumulativeProbability((Math.abs(meanRad) - Yardstick.LEAST_RAD) / deviationRad);
    }
}
