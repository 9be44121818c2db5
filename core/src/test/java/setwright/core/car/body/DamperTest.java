package setwright.core.car.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class DamperTest {
    private static final double ROUNDING = 1.0e-9;

    private final Damper damper = new Damper(5000.0, 2000.0, 8000.0, 3000.0, 0.05);

    @Test
    void eachDirectionHasItsOwnSlopes() {
        assertThat(damper.force(0.02)).isCloseTo(100.0, within(ROUNDING));
        assertThat(damper.force(-0.02)).isCloseTo(-160.0, within(ROUNDING));
        assertThat(damper.force(0.15)).isCloseTo(5000.0 * 0.05 + 2000.0 * 0.10, within(ROUNDING));
        assertThat(damper.force(-0.15)).isCloseTo(-(8000.0 * 0.05 + 3000.0 * 0.10), within(ROUNDING));
    }

    @Test
    void forceIsContinuousAtTheKneeAndAtRest() {
        double small = 1.0e-9;
        for (double at : new double[] {0.05, -0.05, 0.0}) {
            assertThat(damper.force(at + small)).isCloseTo(damper.force(at - small), within(8000.0 * 4.0 * small));
        }
    }

    @Test
    void slopeIsTheChordFromRest() {
        for (double speed = -0.3; speed < 0.3; speed += 0.017) {
            assertThat(damper.slope(speed) * speed).isCloseTo(damper.force(speed), within(ROUNDING));
        }
        assertThat(damper.slope(0.0)).isEqualTo(5000.0);
    }

    @Test
    void multipliedDamperKeepsItsKnee() {
        assertThat(damper.times(2.0).force(0.15)).isCloseTo(2.0 * damper.force(0.15), within(ROUNDING));
        assertThat(damper.times(2.0).force(-0.04)).isCloseTo(2.0 * damper.force(-0.04), within(ROUNDING));
    }
}
