package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.numerics.ExponentialApproach;

/**
 * Heights of loblolly pines of seed 329: F. H. Kung, Proceedings of the Statistical Computing Section, American Statistical
 * Association, 1986, 340-343, as in J. C. Pinheiro and D. M. Bates, Mixed-Effects Models in S and S-PLUS, 2000, who fit
 * {@code Asym + (R0 - Asym) exp(-exp(lrc) age)} to them (fitted values from memory).
 */
class ApproachAgainstPublishedFitTest {
    private static final double[] AGE_YEARS = {3, 5, 10, 15, 20, 25};
    private static final double[] HEIGHT_FEET = {3.93, 9.34, 26.08, 37.79, 48.31, 56.43};

    @Test
    void isThePublishedOne() {
        ExponentialApproach fit = ExponentialApproach.fit(AGE_YEARS, HEIGHT_FEET);
        double halfLastPrintedDigit = 0.5e-4;
        assertThat(fit.end()).isCloseTo(94.1282, within(halfLastPrintedDigit));
        assertThat(fit.end() - fit.rise()).isCloseTo(-8.2508, within(halfLastPrintedDigit));
        assertThat(-Math.log(fit.tau())).isCloseTo(-3.2176, within(halfLastPrintedDigit));
        assertThat(fit.deviation()).isCloseTo(0.7493, within(halfLastPrintedDigit));
        assertThat(fit.explains()).isTrue();
    }
}
