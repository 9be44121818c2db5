package setwright.core.car.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties that hold at any operating point; points are drawn with fixed seeds, shown when one fails. */
final class RaceTyreTest {
    private static final double NOMINAL_N = 4000.0;
    private static final double BEST_INCLINATION = Math.toRadians(-2.5);

    private static final RaceTyre TYRE = new RaceTyre(
            NOMINAL_N,
            1.5,
            1.6,
            0.15,
            Math.toRadians(7.0),
            0.3,
            0.11,
            CurveShape.of(1.4),
            CurveShape.of(1.5),
            new CamberEffect(BEST_INCLINATION, 12.0, 8.0, 0.1),
            new PressureEffect(0.4, 2.0));

    private record Point(double slip, double ratio, double loadN, double inclination, double pressure) {
        static Point draw(Random random) {
            return new Point(
                    0.4 * (random.nextDouble() - 0.5),
                    0.6 * (random.nextDouble() - 0.5),
                    100.0 + 2.9 * NOMINAL_N * random.nextDouble(),
                    0.2 * (random.nextDouble() - 0.5),
                    0.7 + 0.6 * random.nextDouble());
        }
    }

    private static void atManyPoints(long seed, Consumer<Point> check) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            Point point = Point.draw(random);
            try {
                check.accept(point);
            } catch (AssertionError e) {
                throw new AssertionError("seed " + seed + ", draw " + i + ", " + point, e);
            }
        }
    }

    @Test
    void isOddInSlip() {
        atManyPoints(11, p -> {
            assertThat(TYRE.lateral(-p.slip, p.loadN, -p.inclination, p.pressure))
                    .isEqualTo(-TYRE.lateral(p.slip, p.loadN, p.inclination, p.pressure));
            assertThat(TYRE.longitudinal(-p.ratio, p.loadN, p.inclination, p.pressure))
                    .isEqualTo(-TYRE.longitudinal(p.ratio, p.loadN, p.inclination, p.pressure));
        });
    }

    @Test
    void peaksWhereAndAsHighAsItSays() {
        atManyPoints(12, p -> {
            double peak = TYRE.lateralPeak(p.loadN, p.inclination, p.pressure);
            double at = TYRE.peakSlipAngle(p.loadN, p.inclination, p.pressure);
            assertThat(at).isPositive();
            assertThat(TYRE.lateral(at, p.loadN, p.inclination, p.pressure)).isCloseTo(peak, within(1.0e-9 * peak));
            assertThat(TYRE.lateral(0.9 * at, p.loadN, p.inclination, p.pressure))
                    .isLessThan(peak);
            assertThat(TYRE.lateral(1.1 * at, p.loadN, p.inclination, p.pressure))
                    .isLessThan(peak);

            double drive = TYRE.longitudinalPeak(p.loadN, p.inclination, p.pressure);
            double ratio = TYRE.peakSlipRatio(p.loadN, p.inclination, p.pressure);
            assertThat(TYRE.longitudinal(ratio, p.loadN, p.inclination, p.pressure))
                    .isCloseTo(drive, within(1.0e-9 * drive));
            assertThat(TYRE.longitudinal(p.ratio, p.loadN, p.inclination, p.pressure))
                    .isBetween(-drive, drive);
        });
    }

    @Test
    void hasItsFrictionAndPeakSlipAtNominalLoad() {
        RaceTyre plain = plain(0.15);
        assertThat(plain.lateralPeak(NOMINAL_N, 0.0, 1.0)).isCloseTo(1.5 * NOMINAL_N, within(1.0e-9));
        assertThat(plain.longitudinalPeak(NOMINAL_N, 0.0, 1.0)).isCloseTo(1.6 * NOMINAL_N, within(1.0e-9));
        assertThat(plain.peakSlipAngle(NOMINAL_N, 0.0, 1.0)).isCloseTo(Math.toRadians(7.0), within(1.0e-12));
        assertThat(plain.lateralPeak(2.0 * NOMINAL_N, 0.0, 1.0))
                .isCloseTo(1.5 * (1.0 - 0.15) * 2.0 * NOMINAL_N, within(1.0e-9));
        assertThat(plain.peakSlipAngle(2.0 * NOMINAL_N, 0.0, 1.0))
                .isCloseTo(Math.toRadians(7.0) * Math.pow(2.0, 0.3), within(1.0e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.1, 0.2, 0.5, 1.0})
    void gripGrowsWithLoadAndFrictionStaysAboveItsFloor(double sensitivity) {
        RaceTyre tyre = plain(sensitivity);
        double before = 0.0;
        for (double load = 50.0; load <= 5.0 * NOMINAL_N; load += 50.0) {
            double peak = tyre.lateralPeak(load, 0.0, 1.0);
            assertThat(peak).isGreaterThan(before);
            assertThat(peak / load).isGreaterThanOrEqualTo(0.3 * 1.5 - 1.0e-12);
            before = peak;
        }
        assertThat(tyre.lateralPeak(0.0, 0.0, 1.0)).isZero();
        assertThat(tyre.lateral(0.1, 0.0, 0.0, 1.0)).isZero();
    }

    /** By the square of the transfer: two wheels lose {@code 2 mu s dF^2 / F_z0} of an axle's peak. */
    @ParameterizedTest
    @ValueSource(doubles = {500.0, 1000.0, 2000.0, 3500.0})
    void loadTransferCostsAxleGrip(double transferN) {
        RaceTyre tyre = plain(0.15);
        double even = 2.0 * tyre.lateralPeak(NOMINAL_N, 0.0, 1.0);
        double uneven =
                tyre.lateralPeak(NOMINAL_N - transferN, 0.0, 1.0) + tyre.lateralPeak(NOMINAL_N + transferN, 0.0, 1.0);
        assertThat(even - uneven).isCloseTo(2.0 * 1.5 * 0.15 * transferN * transferN / NOMINAL_N, within(1.0e-8));
    }

    @Test
    void gripIsBestAtBestCamberAndPressure() {
        double best = TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION, 1.0);
        for (double off = 0.01; off < 0.3; off += 0.01) {
            assertThat(TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION + off, 1.0)).isLessThan(best);
            assertThat(TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION - off, 1.0)).isLessThan(best);
            assertThat(TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION, 1.0 + off)).isLessThan(best);
            assertThat(TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION, 1.0 - off)).isLessThan(best);
            assertThat(TYRE.longitudinalPeak(NOMINAL_N, off, 1.0))
                    .isEqualTo(TYRE.longitudinalPeak(NOMINAL_N, -off, 1.0))
                    .isLessThan(TYRE.longitudinalPeak(NOMINAL_N, 0.0, 1.0));
        }
        double farOff = 3.0;
        assertThat(TYRE.lateralPeak(NOMINAL_N, farOff, 1.0)).isCloseTo(0.3 * best, within(1.0e-9));
        assertThat(TYRE.lateralPeak(NOMINAL_N, BEST_INCLINATION, farOff)).isCloseTo(0.3 * best, within(1.0e-9));
    }

    @Test
    void leaningIntoTheTurnThrustsAndPressureStiffens() {
        assertThat(TYRE.lateral(0.0, NOMINAL_N, -0.05, 1.0)).isPositive();
        assertThat(TYRE.lateral(0.0, NOMINAL_N, 0.05, 1.0)).isNegative();
        assertThat(TYRE.peakSlipAngle(NOMINAL_N, -0.05, 1.0)).isLessThan(TYRE.peakSlipAngle(NOMINAL_N, 0.0, 1.0));
        assertThat(TYRE.peakSlipAngle(NOMINAL_N, 0.0, 1.1))
                .isCloseTo(TYRE.peakSlipAngle(NOMINAL_N, 0.0, 1.0) / 1.04, within(1.0e-12));
    }

    @Test
    void staysInsideTheFrictionEllipse() {
        atManyPoints(13, p -> {
            double drivePeak = TYRE.longitudinalPeak(p.loadN, p.inclination, p.pressure);
            double driveN = 2.0 * p.ratio / 0.6 * drivePeak * 1.2;
            double sideN = TYRE.lateralGiven(p.slip, driveN, p.loadN, p.inclination, p.pressure);
            double towardSide = sideN < 0.0 ? -p.inclination : p.inclination;
            double x = Math.min(1.0, Math.abs(driveN / drivePeak));
            double y = sideN / TYRE.lateralPeak(p.loadN, towardSide, p.pressure);
            assertThat(x * x + y * y).isLessThanOrEqualTo(1.0 + 1.0e-12);
        });
    }

    @Test
    void slipAngleOfAForceUndoesTheForceOfASlipAngle() {
        atManyPoints(14, p -> {
            double driveN = p.ratio * TYRE.longitudinalPeak(p.loadN, p.inclination, p.pressure);
            double top = TYRE.peakSlipAngle(p.loadN, p.inclination, p.pressure);
            double bottom = -TYRE.peakSlipAngle(p.loadN, -p.inclination, p.pressure);
            double within = 0.5 + 0.98 * p.slip / 0.4;
            double slip = bottom + within * (top - bottom);
            double sideN = TYRE.lateralGiven(slip, driveN, p.loadN, p.inclination, p.pressure);
            assertThat(TYRE.slipAngleGiven(sideN, driveN, p.loadN, p.inclination, p.pressure))
                    .isCloseTo(slip, within(1.0e-9));
        });
    }

    /** What a caller may keep over several slip angles. */
    @Test
    void peakSlipAndCamberSlipMakeTheWholeCurve() {
        atManyPoints(16, p -> {
            double shift = TYRE.camberSlip(p.loadN, p.inclination, p.pressure);
            double peakSlip = TYRE.peakSlipAngle(p.loadN, p.inclination, p.pressure);
            double slip = Math.abs(p.slip) - Math.min(0.0, shift);
            double share = TYRE.lateralShape().share((slip + shift) / (peakSlip + shift));
            assertThat(TYRE.lateralPeak(p.loadN, p.inclination, p.pressure) * share)
                    .isCloseTo(TYRE.lateral(slip, p.loadN, p.inclination, p.pressure), within(1.0e-9 * p.loadN));
        });
    }

    @Test
    void aForceBeyondTheTyreComesBackAsItsPeakSlip() {
        double beyond = 2.0 * TYRE.lateralPeak(NOMINAL_N, -0.02, 1.0);
        assertThat(TYRE.slipAngleGiven(beyond, 0.0, NOMINAL_N, -0.02, 1.0))
                .isCloseTo(TYRE.peakSlipAngle(NOMINAL_N, -0.02, 1.0), within(1.0e-12));
        double allDrive = TYRE.longitudinalPeak(NOMINAL_N, -0.02, 1.0);
        assertThat(TYRE.lateralGiven(0.1, allDrive, NOMINAL_N, -0.02, 1.0)).isZero();
        assertThat(TYRE.slipAngleGiven(10.0, allDrive, NOMINAL_N, -0.02, 1.0))
                .isCloseTo(TYRE.peakSlipAngle(NOMINAL_N, -0.02, 1.0), within(1.0e-12));
    }

    /** Central difference: error of order {@code h^2}, plus round-off over h. */
    @Test
    void slopeIsTheDerivative() {
        double h = 1.0e-6;
        atManyPoints(15, p -> {
            double driveN = p.ratio * TYRE.longitudinalPeak(p.loadN, p.inclination, p.pressure);
            double up = TYRE.lateralGiven(p.slip + h, driveN, p.loadN, p.inclination, p.pressure);
            double down = TYRE.lateralGiven(p.slip - h, driveN, p.loadN, p.inclination, p.pressure);
            assertThat(TYRE.lateralSlopeGiven(p.slip, driveN, p.loadN, p.inclination, p.pressure))
                    .isCloseTo((up - down) / (2.0 * h), within(1.0e-5 * p.loadN / TYRE.peakSlipAngle()));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.0, 0.0, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAnImpossibleFriction(double friction) {
        assertThatThrownBy(() -> new RaceTyre(
                        NOMINAL_N,
                        friction,
                        1.6,
                        0.1,
                        0.12,
                        0.3,
                        0.1,
                        CurveShape.of(1.4),
                        CurveShape.of(1.5),
                        CamberEffect.NONE,
                        PressureEffect.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lateral friction of a tyre must be 0.1 to 5.0, got " + friction);
    }

    private static RaceTyre plain(double sensitivity) {
        return new RaceTyre(
                NOMINAL_N,
                1.5,
                1.6,
                sensitivity,
                Math.toRadians(7.0),
                0.3,
                0.11,
                CurveShape.of(1.4),
                CurveShape.of(1.5),
                CamberEffect.NONE,
                PressureEffect.NONE);
    }
}
