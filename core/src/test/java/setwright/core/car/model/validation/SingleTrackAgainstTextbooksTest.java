package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.model.SingleTrack;

/** Worked examples of textbooks; each names its book. Printed units are kept and converted where they are used. */
final class SingleTrackAgainstTextbooksTest {
    private static final double GRAVITY = 9.81;

    /** Source: H. B. Pacejka, Tire and Vehicle Dynamics, Table 1.1 (from memory): radius of gyration 1.5 m. */
    private static final SingleTrack PACEJKA = new SingleTrack(1600.0, 3600.0, 1.4, 1.6, 60_000.0, 60_000.0);

    /** The same car with its centre of gravity as far behind the middle as it was before it. */
    private static final SingleTrack TAIL_HEAVY = new SingleTrack(1600.0, 3600.0, 1.6, 1.4, 60_000.0, 60_000.0);

    private static Offset<Double> relative(double value, double share) {
        return within(share * Math.abs(value));
    }

    /** The book has eta = 0.0174 rad per g. */
    @Test
    void pacejkaGradientAndCharacteristicSpeed() {
        double gradient = PACEJKA.understeerGradient();
        assertThat(gradient).isCloseTo(1.77778e-3, relative(1.77778e-3, 1.0e-5));
        assertThat(Math.toDegrees(gradient * GRAVITY)).isCloseTo(0.9992, within(1.0e-4));
        assertThat(gradient * GRAVITY).isCloseTo(0.0174, within(5.0e-5));
        assertThat(PACEJKA.characteristicSpeedMps().orElseThrow()).isCloseTo(41.079, within(1.0e-3));
        assertThat(PACEJKA.criticalSpeedMps()).isEmpty();
        assertThat(PACEJKA.stabilityFactor()).isCloseTo(1.77778e-3 / 3.0, relative(6.0e-4, 1.0e-5));
        assertThat(PACEJKA.neutralSteerPointM()).isCloseTo(1.5, within(1.0e-12));
        assertThat(PACEJKA.staticMargin()).isCloseTo(0.1 / 3.0, within(1.0e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "20, 5.3892, -0.91018, 107.784, 4.1708, 0.9011, 0.2489, -3.7583, 1.8085",
        "30, 6.5217, -2.08696, 195.652, 3.0957, 0.8094, 0.3733, -2.5056, 1.8181",
        "40, 6.8441, -3.13308, 273.764, 2.6171, 0.7180, 0.4978, -1.8792, 1.8215",
        "60, 6.3830, -4.59574, 382.979, 2.2127, 0.5662, 0.7467, -1.2528, 1.8238"
    })
    void pacejkaGainsAndFreeMotion(
            double speed,
            double yaw,
            double sideslip,
            double lateral,
            double frequency,
            double damping,
            double lead,
            double real,
            double imaginary) {
        assertThat(PACEJKA.yawGain(speed)).isCloseTo(yaw, relative(yaw, 1.0e-4));
        assertThat(PACEJKA.sideslipGain(speed)).isCloseTo(sideslip, relative(sideslip, 1.0e-4));
        assertThat(PACEJKA.lateralGain(speed)).isCloseTo(lateral, relative(lateral, 1.0e-4));
        assertThat(PACEJKA.naturalFrequency(speed).orElseThrow()).isCloseTo(frequency, relative(frequency, 1.0e-4));
        assertThat(PACEJKA.dampingRatio(speed).orElseThrow()).isCloseTo(damping, relative(damping, 1.0e-4));
        assertThat(PACEJKA.yawLeadTimeS(speed)).isCloseTo(lead, within(5.1e-5));
        Complex first = PACEJKA.eigenvalues(speed).get(0);
        Complex second = PACEJKA.eigenvalues(speed).get(1);
        assertThat(first.getRealPart()).isCloseTo(real, relative(real, 1.0e-4));
        assertThat(first.getImaginaryPart()).isCloseTo(imaginary, relative(imaginary, 1.0e-4));
        assertThat(second).isEqualTo(first.conjugate());
    }

    @Test
    void tailHeavyCarHasACriticalSpeed() {
        assertThat(TAIL_HEAVY.understeerGradient()).isCloseTo(-1.77778e-3, relative(1.77778e-3, 1.0e-5));
        assertThat(TAIL_HEAVY.criticalSpeedMps().orElseThrow()).isCloseTo(41.079, within(1.0e-3));
        assertThat(TAIL_HEAVY.characteristicSpeedMps()).isEmpty();
        assertThat(TAIL_HEAVY.staticMargin()).isNegative();
        assertThat(TAIL_HEAVY.eigenvalues(42.0).get(0).getRealPart()).isPositive();
        assertThat(TAIL_HEAVY.eigenvalues(42.0).get(1).getRealPart()).isNegative();
        assertThat(TAIL_HEAVY.eigenvalues(41.0).get(0).getRealPart()).isNegative();
        assertThat(TAIL_HEAVY.yawRateStep(42.0)).isEmpty();
        assertThat(TAIL_HEAVY.naturalFrequency(42.0)).isEmpty();
        assertThat(TAIL_HEAVY.dampingRatio(42.0)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20, 8.7379, -1.9155, -5.6011", "30, 21.4286, -0.6722, -4.3389"})
    void tailHeavyCarBelowIt(double speed, double yaw, double slow, double fast) {
        assertThat(TAIL_HEAVY.yawGain(speed)).isCloseTo(yaw, relative(yaw, 1.0e-4));
        assertThat(TAIL_HEAVY.eigenvalues(speed).get(0).getRealPart()).isCloseTo(slow, relative(slow, 1.0e-4));
        assertThat(TAIL_HEAVY.eigenvalues(speed).get(1).getRealPart()).isCloseTo(fast, relative(fast, 1.0e-4));
        assertThat(TAIL_HEAVY.eigenvalues(speed).get(0).getImaginaryPart()).isZero();
    }

    /** Source: J. Y. Wong, Theory of Ground Vehicles, example 5.1 (from memory). */
    @Test
    void wongExample() {
        double massKg = 20_105.0 / GRAVITY;
        double toFront = 2.8 * (1.0 - 0.535);
        SingleTrack car = new SingleTrack(massKg, 3000.0, toFront, 2.8 - toFront, 2.0 * 38_920.0, 2.0 * 38_250.0);
        assertThat(car.understeerGradient() * GRAVITY).isCloseTo(0.01598, relative(0.01598, 0.002));
        assertThat(Math.toDegrees(car.understeerGradient() * GRAVITY)).isCloseTo(0.915, relative(0.915, 0.002));
        assertThat(car.characteristicSpeedMps().orElseThrow()).isCloseTo(41.46, relative(41.46, 0.002));
        assertThat(3.6 * car.characteristicSpeedMps().orElseThrow()).isCloseTo(149.3, relative(149.3, 0.002));
    }

    /** Source: a problem of the same book; figures in pound, foot and second, which the formulas do not mind. */
    @Test
    void wongProblem() {
        double feetPerS2 = 32.174;
        double toFront = 0.45 * 10.5;
        SingleTrack car =
                new SingleTrack(4520.0 / feetPerS2, 2000.0, toFront, 10.5 - toFront, 2.0 * 8750.0, 2.0 * 8600.0);
        assertThat(car.understeerGradient() * feetPerS2).isCloseTo(0.02380, relative(0.02380, 0.001));
        assertThat(Math.toDegrees(car.understeerGradient() * feetPerS2)).isCloseTo(1.3637, relative(1.3637, 0.001));
        double feetPerS = car.characteristicSpeedMps().orElseThrow();
        assertThat(feetPerS).isCloseTo(119.1, relative(119.1, 0.001));
        assertThat(feetPerS * 3600.0 / 5280.0).isCloseTo(81.2, relative(81.2, 0.001));
    }

    /** Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992, chapter 6 (from memory); pound, foot, second. */
    @Test
    void gillespieExample() {
        double feetPerS2 = 32.2;
        double wheelbase = 100.6 / 12.0;
        double frontLb = 1901.0;
        double rearLb = 1552.0;
        double toFront = wheelbase * rearLb / (frontLb + rearLb);
        double perRad = 180.0 / Math.PI;
        SingleTrack car = new SingleTrack(
                (frontLb + rearLb) / feetPerS2,
                2000.0,
                toFront,
                wheelbase - toFront,
                2.0 * 241.0 * perRad,
                2.0 * 217.0 * perRad);
        double slowly = 1.0e-6;
        double[][] radiusAndSteerDeg = {{500.0, 0.961}, {200.0, 2.402}, {100.0, 4.803}, {50.0, 9.607}};
        for (double[] row : radiusAndSteerDeg) {
            assertThat(Math.toDegrees(car.steerAngle(row[0], slowly))).isCloseTo(row[1], relative(row[1], 0.005));
        }
        assertThat(Math.toDegrees(car.understeerGradient() * feetPerS2)).isCloseTo(0.368, relative(0.368, 0.005));
        double characteristic = car.characteristicSpeedMps().orElseThrow();
        assertThat(characteristic).isCloseTo(205.0, relative(205.0, 0.005));
        assertThat(characteristic * 3600.0 / 5280.0).isCloseTo(139.8, relative(139.8, 0.005));
        double sixtyMph = 60.0 * 5280.0 / 3600.0;
        assertThat(car.lateralGain(sixtyMph) / feetPerS2 / perRad).isCloseTo(0.423, relative(0.423, 0.005));
        assertThat(car.yawGain(sixtyMph)).isCloseTo(8.86, relative(8.86, 0.005));
        assertThat(Math.toDegrees(car.sideslip(800.0, sixtyMph))).isCloseTo(-0.744, relative(0.744, 0.005));
    }

    /** Source: exercise of a vehicle dynamics course (statement published; results computed by a separate script). */
    @Test
    void exerciseAtHalfAGravity() {
        SingleTrack car = new SingleTrack(1008.0, 1031.0, 1.2, 1.0, 117_000.0, 145_000.0);
        double speed = 10.0;
        double radius = speed * speed / (0.5 * GRAVITY);
        double share = 1.0e-3;
        assertThat(car.understeerGradient()).isCloseTo(1.2423e-4, relative(1.2423e-4, share));
        assertThat(Math.toDegrees(car.understeerGradient() * GRAVITY)).isCloseTo(0.0698, relative(0.0698, share));
        assertThat(radius).isCloseTo(20.387, relative(20.387, share));
        assertThat(car.steerAngle(radius, speed)).isCloseTo(0.10852, relative(0.10852, share));
        assertThat(Math.toDegrees(car.steerAngle(radius, speed))).isCloseTo(6.218, relative(6.218, share));
        assertThat(car.characteristicSpeedMps().orElseThrow()).isCloseTo(133.07, relative(133.07, share));
        assertThat(car.sideslip(radius, speed)).isCloseTo(0.03045, relative(0.03045, share));
        assertThat(car.naturalFrequency(speed).orElseThrow()).isCloseTo(28.188, relative(28.188, share));
        assertThat(car.dampingRatio(speed).orElseThrow()).isCloseTo(1.0004, relative(1.0004, share));
        assertThat(car.yawLeadTimeS(speed)).isCloseTo(0.0379, relative(0.0379, share));
        assertThat(car.sideslip(radius, car.speedWithoutSideslipMps())).isCloseTo(0.0, within(1.0e-12));
    }

    /** Equal arms and axles: neutral, by definition of the gradient in ISO 8855. */
    @ParameterizedTest
    @CsvSource({"10", "30", "60"})
    void evenCarIsNeutral(double speed) {
        SingleTrack car = new SingleTrack(1600.0, 3600.0, 1.5, 1.5, 60_000.0, 60_000.0);
        assertThat(car.understeerGradient()).isZero();
        assertThat(car.steerAngle(100.0, speed)).isEqualTo(3.0 / 100.0);
        assertThat(car.yawGain(speed)).isEqualTo(speed / 3.0);
        assertThat(car.characteristicSpeedMps()).isEmpty();
        assertThat(car.criticalSpeedMps()).isEmpty();
    }

    /** Turning in, the front axle works more than the rear though the car is neutral: moments about the vertical axis. */
    @Test
    void turnInLooksLikeUndersteer() {
        SingleTrack car = new SingleTrack(1600.0, 3600.0, 1.5, 1.5, 60_000.0, 60_000.0);
        double lateral = 5.0;
        double yawAcceleration = 1.0;
        assertThat(car.frontForceN(lateral, yawAcceleration) - car.rearForceN(lateral, yawAcceleration))
                .isCloseTo(2400.0, within(1.0e-9));
        assertThat(car.frontForceN(lateral, yawAcceleration) + car.rearForceN(lateral, yawAcceleration))
                .isCloseTo(1600.0 * lateral, within(1.0e-9));
        assertThat(car.slipDifference(lateral, yawAcceleration)).isCloseTo(0.04, within(1.0e-12));
        assertThat(Math.toDegrees(car.slipDifference(lateral, yawAcceleration))).isCloseTo(2.29, within(0.005));
        assertThat(car.slipDifference(lateral, 0.0)).isCloseTo(0.0, within(1.0e-15));
    }
}
