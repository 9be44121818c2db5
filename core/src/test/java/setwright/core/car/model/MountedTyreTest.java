package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.car.tyre.CamberEffect;
import setwright.core.car.tyre.CurveShape;
import setwright.core.car.tyre.PressureEffect;
import setwright.core.car.tyre.RaceTyre;

final class MountedTyreTest {
    private static final double CAMBER = Math.toRadians(-2.0);
    private static final double PRESSURE = 1.06;
    private static final double NOMINAL_N = 3000.0;

    private static RaceTyre tyre(double sensitivity, double slipExponent, CurveShape lateral) {
        return new RaceTyre(
                NOMINAL_N,
                1.5,
                1.6,
                sensitivity,
                0.12,
                slipExponent,
                0.1,
                lateral,
                CurveShape.of(1.5),
                new CamberEffect(Math.toRadians(-3.0), 15.0, 7.0, 0.0),
                new PressureEffect(0.5, 1.0));
    }

    private final RaceTyre full = tyre(0.2, 0.3, MountedTyre.SHAPE);
    private final MountedTyre mounted = new MountedTyre(full, CAMBER, PRESSURE);

    @Test
    void peaksAreThoseOfTheFullTyreAtAnyLoad() {
        // up to five times the nominal load: past the bend where the full tyre guards its peak
        for (double load = 10.0; load < 5.0 * NOMINAL_N; load += 97.0) {
            double lateral = full.lateralPeak(load, CAMBER, PRESSURE);
            assertThat(mounted.lateralPeak(load)).as("load %s", load).isCloseTo(lateral, within(1.0e-9 * lateral));
            double along = full.longitudinalPeak(load, CAMBER, PRESSURE);
            assertThat(mounted.alongPeak(load)).as("load %s", load).isCloseTo(along, within(1.0e-9 * along));
        }
    }

    @Test
    void slipAngleAtThePeakIsWithinThreePercentFromHalfToTwiceTheNominalLoad() {
        for (double load = 0.5 * NOMINAL_N; load <= 2.0 * NOMINAL_N; load += 50.0) {
            double exact = full.peakSlipAngle(load, CAMBER, PRESSURE);
            assertThat(mounted.peakSlip(load)).as("load %s", load).isCloseTo(exact, within(0.03 * exact));
        }
    }

    @Test
    void frictionFallsWithLoadAndThePeakForceNeverDoes() {
        for (double load = 100.0; load < 5.0 * NOMINAL_N; load += 100.0) {
            double more = load + 50.0;
            assertThat(mounted.lateralPeak(more) / more).isLessThan(mounted.lateralPeak(load) / load);
            assertThat(mounted.lateralPeak(more)).isGreaterThan(mounted.lateralPeak(load));
        }
    }

    @Test
    void corneringStiffnessIsTheSlopeOfTheFullTyre() {
        double slip = 1.0e-5;
        double slope = full.lateral(slip, NOMINAL_N, CAMBER, PRESSURE) / slip;
        assertThat(mounted.corneringStiffness(NOMINAL_N)).isCloseTo(slope, within(1.0e-6 * slope));
    }

    @Test
    void anotherShapeIsRefused() {
        assertThatThrownBy(() -> new MountedTyre(tyre(0.2, 0.3, CurveShape.of(1.3)), CAMBER, PRESSURE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1.4");
    }
}
