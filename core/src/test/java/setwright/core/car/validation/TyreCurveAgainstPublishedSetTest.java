package setwright.core.car.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.TyreCurve;

/**
 * Source: side force of the coefficient set in E. Bakker, L. Nyborg, H. B. Pacejka, "Tyre modelling for use in vehicle
 * dynamics studies", SAE 870421, 1987, at 4 kN: peak 3690.4 N at 9.35 degrees.
 */
final class TyreCurveAgainstPublishedSetTest {
    private static final double PEAK_N = 3690.4;
    private static final double PEAK_DEG = 9.35;
    /** What the curve without curvature term leaves: 3.5 % of the peak force, as the class says. */
    private static final double SHAPE_ERROR = 0.035;

    @ParameterizedTest
    @CsvSource({"1, 1009.4", "2, 1911.1", "4, 3096.6", "6, 3553.5"})
    void followsThePublishedCurveUpToThePeak(double slipDeg, double forceN) {
        assertThat(TyreCurve.forceShare(slipDeg / PEAK_DEG)).isCloseTo(forceN / PEAK_N, within(SHAPE_ERROR));
    }

    @Test
    void peaksAtOneAndIsItsOwnInverse() {
        double roundOff = 1.0e-12;
        assertThat(TyreCurve.forceShare(1.0)).isCloseTo(1.0, within(roundOff));
        for (double slip = 0.05; slip < 1.0; slip += 0.05) {
            assertThat(TyreCurve.slipShare(TyreCurve.forceShare(slip))).isCloseTo(slip, within(1.0e-9));
        }
        double small = 1.0e-6;
        assertThat(TyreCurve.slipShare(small) / small).isCloseTo(TyreCurve.COMPLIANCE, within(1.0e-6));
    }
}
