package setwright.core.car.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CurveShapeTest {

    @ParameterizedTest
    @ValueSource(doubles = {1.05, 1.3, 1.4, 1.5, 1.65, 1.95})
    void isOneAndLevelAtOneAndUndoneByItsInverse(double factor) {
        CurveShape shape = CurveShape.of(factor);
        assertThat(shape.share(1.0)).isCloseTo(1.0, within(1.0e-12));
        assertThat(shape.slope(1.0)).isCloseTo(0.0, within(1.0e-12));
        assertThat(shape.slope(0.0)).isEqualTo(shape.initialSlope());
        assertThat(shape.share(1.0e9)).isCloseTo(Math.sin(factor * Math.PI / 2.0), within(1.0e-8));
        for (double slip = -0.99; slip < 1.0; slip += 0.01) {
            assertThat(shape.slipShare(shape.share(slip))).isCloseTo(slip, within(1.0e-9));
        }
        assertThat(shape.slipShare(1.5)).isEqualTo(1.0);
        assertThat(shape.slipShare(-1.5)).isEqualTo(-1.0);
    }

    @Test
    void isEqualByItsFactor() {
        assertThat(CurveShape.of(1.4))
                .isEqualTo(CurveShape.of(1.4))
                .hasSameHashCodeAs(CurveShape.of(1.4))
                .isNotEqualTo(CurveShape.of(1.5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 2.0, Double.NaN})
    void refusesAFactorWithoutAPeak(double factor) {
        assertThatThrownBy(() -> CurveShape.of(factor)).isInstanceOf(IllegalArgumentException.class);
    }
}
