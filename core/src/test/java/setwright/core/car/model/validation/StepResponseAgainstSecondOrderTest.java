package setwright.core.car.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.model.StepResponse;

/** Source: step response of the second-order lag, any control handbook: overshoot {@code exp(-pi zeta / sqrt(1 - zeta^2))}. */
final class StepResponseAgainstSecondOrderTest {

    @ParameterizedTest
    @CsvSource({"0.7, 0.04599, 1e-5", "0.5, 0.163, 5e-4"})
    void overshootsByItsDampingAlone(double damping, double overshoot, double tolerance) {
        for (double frequency : new double[] {0.5, 3.0, 40.0}) {
            StepResponse step = new StepResponse(2.0, frequency, damping * frequency, 0.0);
            assertThat(step.overshoot()).isCloseTo(overshoot, within(tolerance));
            double damped = frequency * Math.sqrt(1.0 - damping * damping);
            assertThat(step.peakTimeS().orElseThrow()).isCloseTo(Math.PI / damped, within(1.0e-12));
            assertThat(step.at(Math.PI / damped)).isCloseTo(2.0 * (1.0 + overshoot), within(2.0 * tolerance));
        }
    }

    /** The damping that gives an overshoot U without lead: {@code -ln U / sqrt(pi^2 + ln^2 U)}. */
    @Test
    void overshootOfSixteenPercentMeansHalfDamping() {
        double log = Math.log(0.163);
        double damping = -log / Math.hypot(Math.PI, log);
        assertThat(damping).isCloseTo(0.5, within(1.0e-4));
        assertThat(new StepResponse(1.0, 1.0, damping, 0.0).overshoot()).isCloseTo(0.163, within(1.0e-12));
    }

    /** Without lead, critical damping: {@code 1 - (1 + w t) exp(-w t)}; it reaches 90 % at {@code w t = 3.8897}. */
    @Test
    void criticalDampingHasNoPeak() {
        StepResponse step = new StepResponse(1.0, 2.0, 2.0, 0.0);
        assertThat(step.at(0.7)).isCloseTo(1.0 - 2.4 * Math.exp(-1.4), within(1.0e-12));
        assertThat(step.peakTimeS()).isEmpty();
        assertThat(step.overshoot()).isZero();
        assertThat(step.responseTimeS()).isCloseTo(3.8897 / 2.0, within(1.0e-4));
    }

    /** A lead that cancels one pole leaves a first-order lag: 90 % after ln 10 time constants. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.0, 5.0})
    void aLeadThatCancelsAPoleLeavesAFirstOrderLag(double pole) {
        double other = 2.0;
        StepResponse step = new StepResponse(3.0, Math.sqrt(pole * other), 0.5 * (pole + other), 1.0 / pole);
        assertThat(step.responseTimeS()).isCloseTo(Math.log(10.0) / other, within(1.0e-9));
        assertThat(step.at(0.4)).isCloseTo(3.0 * (1.0 - Math.exp(-0.8)), within(1.0e-9));
        assertThat(step.overshoot()).isCloseTo(0.0, within(1.0e-9));
    }

    /** Damping 0.5 to 2 with a long lead: the peak is where the answer turns, found by looking. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.9, 0.999999, 1.0, 1.000001, 1.2, 2.0})
    void peaksWhereItTurns(double damping) {
        StepResponse step = new StepResponse(1.0, 3.0, 3.0 * damping, 1.5);
        double peak = step.peakTimeS().orElseThrow();
        double top = step.at(peak);
        assertThat(top).isCloseTo(1.0 + step.overshoot(), within(1.0e-12)).isGreaterThan(1.0);
        for (double time = 0.0; time < 10.0; time += 0.01) {
            assertThat(step.at(time)).isLessThanOrEqualTo(top + 1.0e-12);
        }
        assertThat(step.responseTimeS()).isLessThan(peak);
        assertThat(step.at(step.responseTimeS())).isCloseTo(0.9, within(1.0e-9));
        assertThat(step.at(0.0)).isZero();
        assertThat(step.at(1.0e4)).isCloseTo(1.0, within(1.0e-12));
    }

    @Test
    void refusesAnUnstableSystem() {
        assertThatThrownBy(() -> new StepResponse(1.0, 2.0, -0.1, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.1 1/s");
    }
}
