package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class MonotoneCubicTest {

    @Test
    void itGoesThroughItsPointsAndKeepsItsEnds() {
        double[] x = {0.0, 1.0, 3.0, 4.0};
        double[] y = {2.0, 5.0, 5.5, 1.0};
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        for (int i = 0; i < x.length; i++) {
            assertThat(curve.at(x[i])).isCloseTo(y[i], within(1e-12));
        }
        assertThat(curve.at(-7.0)).isEqualTo(2.0);
        assertThat(curve.at(9.0)).isEqualTo(1.0);
    }

    @Test
    void aStepIsNotOvershot() {
        MonotoneCubic curve = MonotoneCubic.through(new double[] {0, 1, 2, 3, 4, 5}, new double[] {0, 0, 0, 1, 1, 1});
        double before = 0.0;
        for (double x = 0.0; x <= 5.0; x += 0.01) {
            assertThat(curve.at(x)).isBetween(before - 1e-12, 1.0 + 1e-12);
            before = curve.at(x);
        }
    }

    @Test
    void aSmoothRisingCurveIsMetToTheThirdPower() {
        assertThat(worst(41) / worst(21)).isLessThan(0.16);
        assertThat(worst(41)).isLessThan(1e-4);
    }

    @Test
    void twoPointsMakeALine() {
        assertThat(MonotoneCubic.through(new double[] {1, 3}, new double[] {2, 8})
                        .at(1.5))
                .isCloseTo(3.5, within(1e-12));
    }

    @Test
    void pointsMustRise() {
        assertThatThrownBy(() -> MonotoneCubic.through(new double[] {1, 1}, new double[] {0, 0}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MonotoneCubic.through(new double[] {1}, new double[] {0}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double worst(int points) {
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = 2.0 * i / (points - 1);
            y[i] = Math.exp(x[i]);
        }
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        double worst = 0.0;
        for (double at = 0.0; at <= 2.0; at += 0.003) {
            worst = Math.max(worst, Math.abs(curve.at(at) - Math.exp(at)));
        }
        return worst;
    }
}
