package setwright.core.car.tyre.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.tyre.Relaxation;

/** Source: first-order lag over distance (Pacejka, Tire and Vehicle Dynamics, from memory): 63 % after one length. */
final class RelaxationAgainstFirstOrderLagTest {
    private static final Relaxation RELAXATION = new Relaxation(0.4);

    @Test
    void takesTwentyMillisecondsAtTwentyMetresPerSecond() {
        assertThat(RELAXATION.timeConstantS(20.0)).isCloseTo(0.020, within(1.0e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.4, 0.6321", "1.2, 0.9502"})
    void buildsUpOverDistanceInOneStepAndInMany(double distanceM, double share) {
        assertThat(RELAXATION.after(0.0, 1.0, distanceM)).isCloseTo(share, within(1.0e-3 * share));
        double force = 0.0;
        int steps = 100;
        for (int i = 0; i < steps; i++) {
            force = RELAXATION.after(force, 1.0, distanceM / steps);
        }
        assertThat(force).isCloseTo(RELAXATION.after(0.0, 1.0, distanceM), within(1.0e-12));
    }
}
