package setwright.core.car.sums.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.car.sums.AntiFeatures;
import setwright.core.car.sums.Gravity;
import setwright.core.car.sums.LateralTransfer;
import setwright.core.car.sums.LoadTransfer;
import setwright.core.car.sums.RollMode;
import setwright.core.car.sums.RollStiffness;
import setwright.core.car.sums.Rollover;

/**
 * Load transfer and roll against worked examples. Expected values were worked out apart from this program, with g = 9.81 m/s2;
 * the program's g is 9.80665, which the tolerance of weights allows for.
 */
final class LoadTransferExamplesTest {
    private static final double G = 9.81;
    private static final double STANDARD_OVER_G = Gravity.STANDARD_MPS2 / G;
    private static final double TENTH_OF_A_THOUSANDTH = 1.0e-4;

    /** Moments about the road (T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 1, formula from memory). */
    @Test
    void oneGOfBrakingOnARigidCar() {
        assertThat(LoadTransfer.toRearAxle(1200.0, -G, 0.5, 2.6)).isCloseTo(-2263.85, within(0.01));
        assertThat(LoadTransfer.staticFrontN(1200.0, 1.35, 2.6)).isCloseTo(6112.38 * STANDARD_OVER_G, within(0.01));
        assertThat(LoadTransfer.staticFrontN(1200.0, 1.25, 2.6)).isCloseTo(5659.62 * STANDARD_OVER_G, within(0.01));
    }

    /** Rollover threshold t / (2 h), a static moment balance. */
    @Test
    void rolloverThreshold() {
        assertThat(Rollover.thresholdMps2(1.5, 0.5)).isCloseTo(1.5 * Gravity.STANDARD_MPS2, within(1.0e-12));
    }

    /** Roll axis, unsprung masses and shift of the centre of gravity (Milliken, Milliken, RCVD, ch. 18, formula from memory). */
    @Test
    void lateralTransferOfEachAxle() {
        LateralTransfer car = new LateralTransfer(
                new LateralTransfer.Body(1000.0, 0.55, 1.25, 1.35),
                new LateralTransfer.Axle(40_000.0, 0.05, 1.5, 100.0, 0.30),
                new LateralTransfer.Axle(30_000.0, 0.10, 1.5, 100.0, 0.30));
        assertThat(0.55 - car.armM()).isCloseTo(0.07404, within(5.0e-6));
        assertClose(Math.toDegrees(car.rollRad(G)), 4.0949);
        assertClose(car.frontN(G), 2271.85);
        assertClose(car.rearN(G), 1940.02);
        assertClose(car.frontN(G) + car.rearN(G), 4211.87);
        assertClose(car.frontShare(), 0.53939);
    }

    /** Virtual work: k_w t^2 / 2. */
    @Test
    void rollStiffnessOfAnAxle() {
        double stiffness = RollStiffness.axle(16_000.0, 0.0, 1.5);
        assertThat(stiffness).isCloseTo(18_000.0, within(1.0e-9));
        assertThat(Math.toRadians(stiffness)).isCloseTo(314.16, within(0.005));
    }

    /** Free roll, a damped oscillator. */
    @Test
    void rollMode() {
        RollMode roll = new RollMode(400.0, 4000.0, 70_000.0 - 1000.0 * G * 0.475);
        assertThat(roll.angularFrequency()).isCloseTo(12.781, within(0.0005));
        assertThat(roll.angularFrequency() / (2.0 * Math.PI)).isCloseTo(2.034, within(0.0005));
        assertThat(roll.dampingRatio()).isCloseTo(0.3912, within(0.00005));
    }

    /** Anti-dive of a front axle with outboard brakes (Milliken, Milliken, RCVD, ch. 17, formula from memory). */
    @Test
    void antiDive() {
        assertThat(100.0 * AntiFeatures.antiDive(0.65, Math.toRadians(5.0), 2.6, 0.5))
                .isCloseTo(29.57, within(0.005));
    }

    private static void assertClose(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(TENTH_OF_A_THOUSANDTH * expected));
    }
}
