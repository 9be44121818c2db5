package setwright.core.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class FirstStepTest {
    /** On a round friction circle the rest of 0.7 is the root of 1 - 0.49 (Pythagoras). */
    @Test
    void aRoundCircleLeavesItsRoot() {
        assertThat(FirstStep.beside(2.0)).isCloseTo(Math.sqrt(0.51), within(1.0e-12));
    }

    /** The straight line between all braking and all cornering leaves the rest. */
    @Test
    void whoBrakesBeforeTheBendLeavesTheRest() {
        assertThat(FirstStep.beside(1.0)).isCloseTo(0.3, within(1.0e-12));
    }
}
