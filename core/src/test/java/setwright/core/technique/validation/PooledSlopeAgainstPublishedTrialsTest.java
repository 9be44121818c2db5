package setwright.core.technique.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.technique.CornerSlope;
import setwright.core.technique.PooledSlope;

/**
 * Thirteen trials of the BCG vaccine (G. A. Colditz et al., Journal of the American Medical Association 271, 1994, 698), the usual
 * worked example of random effects: W. Viechtbauer, Journal of Statistical Software 36(3), 2010. Data and results are values from
 * memory; a trial stands for a corner.
 */
final class PooledSlopeAgainstPublishedTrialsTest {
    /** Ill and well of the vaccinated, ill and well of the others. */
    private static final double[][] TRIALS = {
        {4, 119, 11, 128},
        {6, 300, 29, 274},
        {3, 228, 11, 209},
        {62, 13_536, 248, 12_619},
        {33, 5_036, 47, 5_761},
        {180, 1_361, 372, 1_079},
        {8, 2_537, 10, 619},
        {505, 87_886, 499, 87_892},
        {29, 7_470, 45, 7_232},
        {17, 1_699, 65, 1_600},
        {186, 50_448, 141, 27_197},
        {5, 2_493, 3, 2_338},
        {27, 16_886, 29, 17_825}
    };

    private static List<CornerSlope> logRiskRatios() {
        List<CornerSlope> trials = new ArrayList<>();
        for (int i = 0; i < TRIALS.length; i++) {
            double[] t = TRIALS[i];
            double vaccinated = t[0] + t[1];
            double others = t[2] + t[3];
            double ratio = Math.log(t[0] / vaccinated) - Math.log(t[2] / others);
            double variance = 1.0 / t[0] - 1.0 / vaccinated + 1.0 / t[2] - 1.0 / others;
            trials.add(new CornerSlope(i + 1, 100, ratio, Math.sqrt(variance), 97, 1.0));
        }
        return trials;
    }

    /** DerSimonian and Laird: -0.7141, variance between trials 0.3088. */
    @Test
    void commonEffectAndSpread() {
        PooledSlope pooled = PooledSlope.of(logRiskRatios());
        double halfLastPrintedDigit = 0.5e-4;
        assertThat(pooled.slope()).isCloseTo(-0.7141, within(halfLastPrintedDigit));
        assertThat(pooled.spread() * pooled.spread()).isCloseTo(0.3088, within(halfLastPrintedDigit));
        // the plain standard error is 0.1787; what the trials really scatter does not make it smaller
        assertThat(pooled.error()).isBetween(0.1787, 0.185);
    }

    /** Knapp and Hartung's interval, there about the nearly equal restricted likelihood estimate: -1.108 to -0.321. */
    @Test
    void interval() {
        PooledSlope pooled = PooledSlope.of(logRiskRatios());
        double otherEstimateOfTheSpread = 0.01;
        assertThat(pooled.low()).isCloseTo(-1.108, within(otherEstimateOfTheSpread));
        assertThat(pooled.high()).isCloseTo(-0.321, within(otherEstimateOfTheSpread));
    }

    /** A trial's own effect is drawn toward the common one, the less it is known the farther. */
    @Test
    void partialPooling() {
        PooledSlope pooled = PooledSlope.of(logRiskRatios());
        assertThat(pooled.corners()).allSatisfy(at -> {
            double own = at.own().slope();
            double pull = (at.slope() - own) / (pooled.slope() - own);
            assertThat(pull).isBetween(0.0, 1.0);
        });
        PooledSlope.AtCorner small = pooled.corners().get(11);
        PooledSlope.AtCorner large = pooled.corners().get(7);
        assertThat(small.slope() - small.own().slope()).isNegative();
        assertThat(Math.abs(large.slope() - large.own().slope())).isLessThan(0.02);
    }
}
