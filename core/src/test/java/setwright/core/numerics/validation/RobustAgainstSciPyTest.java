package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.numerics.Robust;

/**
 * Robust statistics against figures worked out once with SciPy 1.17.1 and NumPy 2.4.6, on the stack loss data (K. A. Brownlee,
 * Statistical Theory and Methodology in Science and Engineering, 2nd ed., Wiley 1965): 21 days of a plant, four of them wild.
 */
final class RobustAgainstSciPyTest {
    private static final double[] AIR = {
        80, 80, 75, 62, 62, 62, 62, 62, 58, 58, 58, 58, 58, 58, 50, 50, 50, 50, 50, 56, 70
    };
    private static final double[] WATER = {
        27, 27, 25, 24, 22, 23, 24, 24, 23, 18, 18, 17, 18, 19, 18, 18, 19, 19, 20, 20, 20
    };
    private static final double[] ACID = {
        89, 88, 90, 87, 87, 87, 93, 93, 87, 80, 89, 88, 82, 93, 89, 86, 72, 79, 80, 82, 91
    };
    private static final double[] LOSS = {42, 37, 37, 28, 18, 18, 19, 20, 15, 14, 14, 13, 11, 12, 8, 7, 8, 8, 9, 15, 15
    };

    private static final double ROUND_OFF = 1.0e-12;

    /**
     * Another way to the same minimum: {@code least_squares(loss="huber", f_scale=1.345 * s)}, a trust region instead of weights, with
     * {@code s} 1.4826 times the median of the absolute residuals, in turns until neither moves.
     */
    @Test
    void regressionComesToTheSameMinimum() {
        double[] ones = new double[LOSS.length];
        Arrays.fill(ones, 1.0);
        Robust.Fit fit = Robust.regress(new double[][] {ones, AIR, WATER, ACID}, LOSS);
        double stopped = 1.0e-6; // ours stops when the scale moves by less than 1e-9 of itself
        assertThat(fit.coefficient(0)).isCloseTo(-41.0264970631966, within(100.0 * stopped));
        assertThat(fit.coefficient(1)).isCloseTo(0.8293844759500237, within(stopped));
        assertThat(fit.coefficient(2)).isCloseTo(0.9260653228465311, within(stopped));
        assertThat(fit.coefficient(3)).isCloseTo(-0.12784668536038482, within(stopped));
        assertThat(fit.scale()).isCloseTo(2.440531465920234, within(10.0 * stopped));
    }

    /** {@code numpy.quantile(loss, share)}. */
    @ParameterizedTest
    @CsvSource({"0, 7.0", "0.1, 8.0", "0.25, 11.0", "0.333, 12.66", "0.5, 15.0", "0.9, 37.0", "1, 42.0"})
    void quantiles(double share, double expected) {
        assertThat(Robust.quantile(LOSS, share)).isCloseTo(expected, within(ROUND_OFF));
    }

    /** {@code median_abs_deviation(loss)}, times 1.4826. */
    @Test
    void medianDeviation() {
        assertThat(Robust.scaledMad(LOSS)).isCloseTo(1.4826 * 4.0, within(ROUND_OFF));
    }

    /** {@code theilslopes(loss, air, method="joint")}, with ties in {@code air}. */
    @Test
    void medianOfSlopes() {
        Robust.Line line = Robust.theilSen(AIR, LOSS);
        assertThat(line.slope()).isCloseTo(1.0, within(ROUND_OFF));
        assertThat(line.intercept()).isCloseTo(-43.0, within(100.0 * ROUND_OFF));
    }
}
