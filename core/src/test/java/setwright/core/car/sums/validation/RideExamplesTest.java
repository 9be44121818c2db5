package setwright.core.car.sums.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.sums.Damping;
import setwright.core.car.sums.Gravity;
import setwright.core.car.sums.Ride;

/** Ride and damping against worked examples (expected values worked out apart from this program). */
final class RideExamplesTest {
    private static final double TENTH_OF_A_THOUSANDTH = 1.0e-4;

    /** Spring, motion ratio and tyre in series (Milliken, Milliken, RCVD, ch. 16, formulas from memory). */
    @Test
    void cornerOfACar() {
        double wheelRate = Ride.wheelRate(25_000.0, 0.8);
        assertClose(wheelRate, 16_000.0);
        assertClose(Ride.rideRate(wheelRate, 200_000.0), 14_814.8);
        assertClose(Ride.frequencyHz(wheelRate, 250.0), 1.2732);
        assertClose(Ride.frequencyHz(Ride.rideRate(wheelRate, 200_000.0), 250.0), 1.2252);
        assertClose(Ride.hopFrequencyHz(wheelRate, 200_000.0, 35.0), 12.503);
    }

    /** Critical damping 2 sqrt(k m) (any textbook of vibration). */
    @Test
    void damperOfACorner() {
        assertClose(Damping.critical(16_000.0, 250.0), 4000.0);
        assertClose(Damping.atDamper(0.7 * 4000.0, 0.8), 4375.0);
        assertClose(Damping.ratio(Damping.atWheel(4375.0, 0.8), 16_000.0, 250.0), 0.7);
    }

    /** T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 5: deflection of 1, 5 and 10 in (value from memory). */
    @ParameterizedTest(name = "{0} m: {1} Hz")
    @CsvSource({"0.0254, 3.1278", "0.127, 1.3988", "0.254, 0.9891", "0.2485, 1.0000"})
    void frequencyFromStaticDeflection(double deflectionM, double hertz) {
        double massKg = 300.0;
        double rate = massKg * Gravity.STANDARD_MPS2 / deflectionM;
        assertThat(Ride.staticDeflectionM(rate, massKg)).isCloseTo(deflectionM, within(1.0e-12));
        double gravityOf981 = 3.0e-4;
        assertThat(Ride.frequencyHz(rate, massKg)).isCloseTo(hertz, within(gravityOf981 * hertz));
    }

    /** Step response of a second-order system (K. Ogata, Modern Control Engineering, ch. 5, value from memory: 4.6 % and 16.3 %). */
    @Test
    void overshoot() {
        assertThat(100.0 * Damping.overshoot(0.7)).isCloseTo(4.599, within(0.0005));
        assertThat(Damping.ratioOf(0.163)).isCloseTo(0.5, within(0.0005));
    }

    private static void assertClose(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(TENTH_OF_A_THOUSANDTH * expected));
    }
}
