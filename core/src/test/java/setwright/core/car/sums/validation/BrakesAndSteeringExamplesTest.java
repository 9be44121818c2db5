package setwright.core.car.sums.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.sums.Ackermann;
import setwright.core.car.sums.Brakes;
import setwright.core.car.sums.Gravity;

/** Brake shares and Ackermann angles against examples worked out apart from this program. */
final class BrakesAndSteeringExamplesTest {

    /** Ideal share (b + z h) / L, moment balance (R. Limpert, Brake Design and Safety, ch. 7, formula from memory). */
    @ParameterizedTest(name = "{0} g: {1}")
    @CsvSource({"0.4, 0.5962", "0.8, 0.6731", "1.0, 0.7115"})
    void idealFrontShare(double g, double share) {
        Brakes brakes = new Brakes(1200.0, 1.25, 1.35, 0.5);
        double halfLastDigit = 0.00005;
        assertThat(brakes.idealFrontShare(g * Gravity.STANDARD_MPS2)).isCloseTo(share, within(halfLastDigit));
    }

    /** L / R and atan(L / R), geometry. */
    @ParameterizedTest(name = "L {0} m, R {1} m")
    @CsvSource({"2.5, 10, 14.324, 14.036", "2.5, 50, 2.8648, 2.8624", "2.7, 100, 1.54699, 1.54661"})
    void ackermannAngle(double wheelbase, double radius, double small, double exact) {
        assertThat(Math.toDegrees(Ackermann.small(wheelbase, radius))).isCloseTo(small, within(1.0e-3));
        assertThat(Math.toDegrees(Ackermann.middle(wheelbase, radius))).isCloseTo(exact, within(1.0e-3));
    }

    /** T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 6: 100.6 in on 500 to 50 ft (value from memory, 0.5 %). */
    @ParameterizedTest(name = "{0} ft: {1} deg")
    @CsvSource({"500, 0.961", "200, 2.402", "100, 4.803", "50, 9.607"})
    void ackermannAngleOfAPassengerCar(double feet, double degrees) {
        double wheelbase = 100.6 * 0.0254;
        assertThat(Math.toDegrees(Ackermann.small(wheelbase, 0.3048 * feet)))
                .isCloseTo(degrees, within(0.005 * degrees));
    }

    /** cot(outer) - cot(inner) = t / L (Ackermann). */
    @Test
    void innerAndOuterWheel() {
        double inner = Ackermann.inner(2.5, 10.0, 1.5);
        double outer = Ackermann.outer(2.5, 10.0, 1.5);
        assertThat(Math.toDegrees(inner)).isCloseTo(15.124, within(1.0e-3));
        assertThat(Math.toDegrees(outer)).isCloseTo(13.092, within(1.0e-3));
        assertThat(1.0 / Math.tan(outer) - 1.0 / Math.tan(inner)).isCloseTo(0.6, within(1.0e-12));
    }
}
