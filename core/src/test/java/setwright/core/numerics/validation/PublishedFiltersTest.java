package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.numerics.LocalPolynomial;
import setwright.core.numerics.Robust;
import setwright.core.numerics.ZeroPhaseLowPass;

/** Filters and robust statistics against published figures. */
class PublishedFiltersTest {

    /**
     * |H| = 1 / sqrt(1 + (f / fc)^(2n)) of a Butterworth filter: S. Butterworth, On the Theory of Filter Amplifiers, 1930. The
     * bilinear transform warps f to tan(pi f / fs) (Oppenheim and Schafer, chapter 7); forward and backward squares |H|.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.5", "2, 1", "2, 2", "2, 5", "4, 0.5", "4, 1", "4, 2", "4, 3"})
    void gainIsTheSquareOfButterworths(int order, double frequencyHz) {
        double rate = 100.0;
        double cutoff = 1.5;
        int count = 20_000;
        double[] wave = new double[count];
        for (int i = 0; i < count; i++) {
            wave[i] = Math.sin(2.0 * Math.PI * frequencyHz * i / rate);
        }
        double[] out = ZeroPhaseLowPass.butterworth(order, cutoff, rate).apply(wave);
        double in = 0.0;
        double product = 0.0;
        double quadrature = 0.0;
        for (int i = count / 4; i < 3 * count / 4; i++) {
            in += wave[i] * wave[i];
            product += wave[i] * out[i];
            quadrature += Math.cos(2.0 * Math.PI * frequencyHz * i / rate) * out[i];
        }
        double warped = Math.tan(Math.PI * frequencyHz / rate) / Math.tan(Math.PI * cutoff / rate);
        double expected = 1.0 / (1.0 + Math.pow(warped, 2.0 * order));
        double roundOff = 1.0e-6;
        assertThat(product / in).isCloseTo(expected, within(roundOff));
        assertThat(quadrature / in).as("phase").isCloseTo(0.0, within(roundOff));
    }

    /** Savitzky and Golay 1964, table I: quadratic or cubic smoothing over 5 points, (-3 12 17 12 -3) / 35. */
    @Test
    void fivePointSmoothingHasThePublishedCoefficients() {
        double[] published = {-3.0, 12.0, 17.0, 12.0, -3.0};
        double roundOff = 1.0e-12;
        for (int degree : new int[] {2, 3}) {
            LocalPolynomial fit = LocalPolynomial.of(2, degree);
            for (int i = 0; i < 5; i++) {
                double[] pulse = new double[11];
                pulse[3 + i] = 1.0;
                assertThat(fit.smooth(pulse)[5]).isCloseTo(published[i] / 35.0, within(roundOff));
            }
        }
    }

    /** Savitzky and Golay 1964, table III: first derivative of a quadratic over 5 points, (-2 -1 0 1 2) / 10. */
    @Test
    void fivePointDerivativeHasThePublishedCoefficients() {
        double[] published = {-2.0, -1.0, 0.0, 1.0, 2.0};
        double roundOff = 1.0e-12;
        for (int i = 0; i < 5; i++) {
            double[] pulse = new double[11];
            pulse[3 + i] = 1.0;
            assertThat(LocalPolynomial.of(2, 2).derivative(pulse, 1.0)[5])
                    .isCloseTo(published[i] / 10.0, within(roundOff));
        }
    }

    /** Savitzky and Golay 1964, table I: quadratic smoothing over 7 points, (-2 3 6 7 6 3 -2) / 21. */
    @Test
    void sevenPointSmoothingHasThePublishedCoefficients() {
        double[] published = {-2.0, 3.0, 6.0, 7.0, 6.0, 3.0, -2.0};
        double roundOff = 1.0e-12;
        for (int i = 0; i < 7; i++) {
            double[] pulse = new double[15];
            pulse[4 + i] = 1.0;
            assertThat(LocalPolynomial.of(3, 2).smooth(pulse)[7]).isCloseTo(published[i] / 21.0, within(roundOff));
        }
    }

    /** R's quantile(c(1, 2, 4, 7), 0.3) of the default type 7 is 1.9 (Hyndman and Fan 1996; worked by hand: h = 0.9). */
    @Test
    void quantileIsOfTypeSeven() {
        assertThat(Robust.quantile(new double[] {7.0, 1.0, Double.NaN, 4.0, 2.0}, 0.3))
                .isCloseTo(1.9, within(1.0e-12));
    }

    /**
     * P. K. Sen 1968, J. Am. Stat. Assoc. 63, 1379, gives the points t = 1 2 3 4 10 12 18, x = 9 15 19 20 45 55 78 with a slope
     * of 4 (value from memory).
     */
    @Test
    void theilSenGivesSensSlope() {
        Robust.Line line =
                Robust.theilSen(new double[] {1, 2, 3, 4, 10, 12, 18}, new double[] {9, 15, 19, 20, 45, 55, 78});
        assertThat(line.slope()).isCloseTo(4.0, within(1.0e-12));
    }
}
