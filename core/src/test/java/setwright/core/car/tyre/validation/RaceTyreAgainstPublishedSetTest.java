package setwright.core.car.tyre.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.tyre.CamberEffect;
import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.MagicFormula1987;
import setwright.core.car.tyre.PressureEffect;
import setwright.core.car.tyre.RaceTyre;

/**
 * Source: SAE 870421 (1987), coefficient set. The set's side friction is {@code 1.011 - 0.0221 F} (F in kN), so the racing
 * tyre with {@code mu 0.9226} and sensitivity {@code 0.0221 * 4 / 0.9226} at 4 kN has the very same peaks; its brake
 * friction, {@code 1.144 - 0.0213 F}, falls less steeply by share, which one sensitivity for both cannot follow exactly.
 */
final class RaceTyreAgainstPublishedSetTest {
    private static final MagicFormula1987 PUBLISHED = new MagicFormula1987();
    private static final RaceTyre TYRE = new RaceTyre(
            4000.0,
            0.9226,
            1.0588,
            0.0221 * 4.0 / 0.9226,
            PUBLISHED.peakSlipAngle(4000.0, 0.0, 1.0),
            0.0,
            PUBLISHED.peakSlipRatio(4000.0, 0.0, 1.0),
            CurveShape.of(1.4),
            CurveShape.of(1.5),
            CamberEffect.NONE,
            PressureEffect.NONE);

    @ParameterizedTest
    @ValueSource(doubles = {2000.0, 4000.0, 6000.0, 8000.0})
    void hasThePublishedPeaks(double loadN) {
        assertThat(TYRE.lateralPeak(loadN, 0.0, 1.0)).isCloseTo(PUBLISHED.lateralPeak(loadN, 0.0, 1.0), within(1.0e-6));
        double brake = PUBLISHED.longitudinalPeak(loadN, 0.0, 1.0);
        assertThat(TYRE.longitudinalPeak(loadN, 0.0, 1.0)).isCloseTo(brake, within(0.02 * brake));
    }

    /**
     * Without the curvature term the rise differs by up to 3.5 % of the peak across and 7.5 % along: the published brake
     * force rises more steeply (initial slope 3.15 peak forces per peak slip, against 2.60 at C = 1.5).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.4, 0.6, 0.8, 1.0})
    void followsThePublishedCurvesUpToThePeak(double slipShare) {
        double slip = slipShare * TYRE.peakSlipAngle();
        assertThat(TYRE.lateral(slip, 4000.0, 0.0, 1.0))
                .isCloseTo(PUBLISHED.lateral(slip, 4000.0, 0.0, 1.0), within(0.035 * 3690.4));
        double ratio = slipShare * TYRE.peakSlipRatio();
        assertThat(TYRE.longitudinal(ratio, 4000.0, 0.0, 1.0))
                .isCloseTo(PUBLISHED.longitudinal(ratio, 4000.0, 0.0, 1.0), within(0.075 * 4235.2));
    }
}
