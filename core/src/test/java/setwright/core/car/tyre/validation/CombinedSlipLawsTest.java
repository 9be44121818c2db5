package setwright.core.car.tyre.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.tyre.FrictionEllipse;
import setwright.core.car.tyre.MagicFormula1987;
import setwright.core.car.tyre.SimilarityMethod;
import setwright.core.car.tyre.Tyre;
import setwright.core.car.tyre.TyreForce;

/**
 * Sources: friction ellipse {@code (F_x / F_x,max)^2 + (F_y / F_y,max)^2 = 1}, textbook; similarity method, Pacejka, from
 * memory, by the two laws that define it. The pure curves are those of SAE 870421 (1987).
 */
final class CombinedSlipLawsTest {
    private static final Tyre TYRE = new MagicFormula1987();
    private static final double LOAD_N = 4000.0;

    @Test
    void sixTenthsAlongLeaveEightTenthsAcross() {
        double along = 0.6 * TYRE.longitudinalPeak(LOAD_N, 0.0, 1.0);
        double slip = TYRE.peakSlipAngle(LOAD_N, 0.0, 1.0);
        double across = 0.8 * TYRE.lateralPeak(LOAD_N, 0.0, 1.0);
        FrictionEllipse ellipse = new FrictionEllipse(TYRE);
        assertThat(ellipse.lateralGiven(slip, along, LOAD_N, 0.0, 1.0)).isCloseTo(across, within(1.0e-9));
        assertThat(ellipse.lateralGiven(slip, -along, LOAD_N, 0.0, 1.0)).isCloseTo(across, within(1.0e-9));
        assertThat(ellipse.lateralGiven(slip, 2.0 * along, LOAD_N, 0.0, 1.0)).isZero();
    }

    @Test
    void ellipseIsNeverLeftAndGivesNothingBackBeyondItsPeak() {
        FrictionEllipse ellipse = new FrictionEllipse(TYRE);
        for (double ratio = -1.0; ratio <= 1.0; ratio += 0.01) {
            for (double slip = -0.3; slip <= 0.3; slip += 0.02) {
                TyreForce force = ellipse.force(slip, ratio, LOAD_N, 0.0, 1.0);
                double x = force.longitudinalN() / TYRE.longitudinalPeak(LOAD_N, 0.0, 1.0);
                double y = force.lateralN() / TYRE.lateralPeak(LOAD_N, 0.0, 1.0);
                assertThat(x * x + y * y).isLessThanOrEqualTo(1.0 + 1.0e-12);
            }
        }
        assertThat(ellipse.force(0.1, -1.0, LOAD_N, 0.0, 1.0).lateralN()).isZero();
        assertThat(ellipse.force(0.1, 0.0, LOAD_N, 0.0, 1.0).lateralN()).isEqualTo(TYRE.lateral(0.1, LOAD_N, 0.0, 1.0));
    }

    /** One kind of slip alone gives its pure curve: the side forces of the published set. */
    @ParameterizedTest
    @CsvSource({"1, 1009.4", "2, 1911.1", "4, 3096.6", "6, 3553.5", "10, 3688.3", "15, 3622.3"})
    void similarityWithoutSlipRatioIsThePureSideForce(double slipDeg, double forceN) {
        TyreForce force = new SimilarityMethod(TYRE).force(Math.toRadians(slipDeg), 0.0, LOAD_N, 0.0, 1.0);
        assertThat(force.lateralN()).isCloseTo(forceN, within(0.1));
        assertThat(force.longitudinalN()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.9, -0.5, -0.2, -0.1, -0.01, 0.01, 0.1, 0.2, 0.5})
    void similarityWithoutSlipAngleIsThePureLongitudinalForce(double ratio) {
        TyreForce force = new SimilarityMethod(TYRE).force(0.0, ratio, LOAD_N, 0.0, 1.0);
        assertThat(force.longitudinalN()).isCloseTo(TYRE.longitudinal(ratio, LOAD_N, 0.0, 1.0), within(1.0e-6));
        assertThat(force.lateralN()).isZero();
    }

    @Test
    void similarityIsContinuousTowardPureSlip() {
        SimilarityMethod method = new SimilarityMethod(TYRE);
        for (double slip = -0.3; slip <= 0.3; slip += 0.05) {
            double pure = TYRE.lateral(slip, LOAD_N, 0.0, 1.0);
            assertThat(method.force(slip, 1.0e-9, LOAD_N, 0.0, 1.0).lateralN()).isCloseTo(pure, within(0.01));
            assertThat(method.force(slip, -1.0e-9, LOAD_N, 0.0, 1.0).lateralN()).isCloseTo(pure, within(0.01));
        }
    }

    @Test
    void similarityBeyondBothPeaksStaysFiniteAndOpposesTheSlip() {
        TyreForce locked = new SimilarityMethod(TYRE).force(0.1, -1.0, LOAD_N, 0.0, 1.0);
        assertThat(locked.longitudinalN()).isNegative();
        assertThat(locked.lateralN()).isBetween(0.0, TYRE.lateral(0.1, LOAD_N, 0.0, 1.0));
        TyreForce spinning = new SimilarityMethod(TYRE).force(0.1, 50.0, LOAD_N, 0.0, 1.0);
        assertThat(spinning.longitudinalN()).isPositive();
        assertThat(spinning.lateralN()).isBetween(0.0, TYRE.lateral(0.1, LOAD_N, 0.0, 1.0));
    }

    /** A tyre that is the same in every direction of slip has a force whose size does not depend on the direction. */
    @ParameterizedTest
    @CsvSource({"0.02, 1", "0.1, 1", "0.3, 1", "0.02, -1", "0.1, -1", "0.3, -1"})
    void similarityOfAnIsotropicTyreKnowsNoDirection(double sigma, double driving) {
        SimilarityMethod method = new SimilarityMethod(new Isotropic(driving));
        double expected = Isotropic.size(sigma);
        for (double direction = 0.0; direction <= 90.0; direction += 7.5) {
            double along = driving * sigma * Math.cos(Math.toRadians(direction));
            double across = sigma * Math.sin(Math.toRadians(direction));
            double roll = 1.0 / (1.0 - along);
            TyreForce force = method.force(Math.atan(across * roll), roll - 1.0, LOAD_N, 0.0, 1.0);
            assertThat(force.sizeN()).isCloseTo(expected, within(1.0e-6 * expected));
            assertThat(force.lateralN() * along).isCloseTo(force.longitudinalN() * across, within(1.0e-6 * expected));
        }
    }

    /** Both forces from the same curve over sigma; its peak slip ratio is right on one side, driving or braking. */
    private record Isotropic(double driving) implements Tyre {
        private static final double PEAK_SIGMA = 0.12;

        static double size(double sigma) {
            return 5000.0 * Math.sin(1.5 * Math.atan(Math.tan(Math.PI / 3.0) * sigma / PEAK_SIGMA));
        }

        @Override
        public double lateral(double slipAngle, double loadN, double inclination, double pressure) {
            return size(Math.tan(slipAngle));
        }

        @Override
        public double longitudinal(double slipRatio, double loadN, double inclination, double pressure) {
            return size(slipRatio / (1.0 + slipRatio));
        }

        @Override
        public double lateralPeak(double loadN, double inclination, double pressure) {
            return size(PEAK_SIGMA);
        }

        @Override
        public double longitudinalPeak(double loadN, double inclination, double pressure) {
            return size(PEAK_SIGMA);
        }

        @Override
        public double peakSlipAngle(double loadN, double inclination, double pressure) {
            return Math.atan(PEAK_SIGMA);
        }

        @Override
        public double peakSlipRatio(double loadN, double inclination, double pressure) {
            return PEAK_SIGMA / (1.0 - driving * PEAK_SIGMA);
        }
    }
}
