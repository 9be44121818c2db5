package setwright.core.numerics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.numerics.NormalBelief;

/**
 * The two physicists of G. E. P. Box and G. C. Tiao, Bayesian Inference in Statistical Analysis (1973), section 1.2 (value from memory):
 * one believes 900 with a deviation of 20, the other 800 with 80; a measurement of deviation 40 gives 850.
 */
final class NormalBeliefAgainstTextbookTest {

    @Test
    void bothBeliefsMoveAsPublished() {
        NormalBelief first = new NormalBelief(900.0, 20.0).given(850.0, 40.0);
        assertThat(first.mean()).isCloseTo(890.0, within(0.05));
        assertThat(first.deviation()).isCloseTo(17.9, within(0.05));
        NormalBelief second = new NormalBelief(800.0, 80.0).given(850.0, 40.0);
        assertThat(second.mean()).isCloseTo(840.0, within(0.05));
        assertThat(second.deviation()).isCloseTo(35.78, within(0.05));
    }

    @Test
    void nothingBelievedLeavesTheDatum() {
        NormalBelief belief = NormalBelief.nothing().given(3.0, 0.5);
        assertThat(belief.mean()).isEqualTo(3.0);
        assertThat(belief.deviation()).isCloseTo(0.5, within(1.0e-12));
    }

    @Test
    void whatIsCertainStays() {
        assertThat(new NormalBelief(1.0, 0.0).given(5.0, 0.1)).isEqualTo(new NormalBelief(1.0, 0.0));
    }
}
