package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.slip.HandsReading.Cause;

final class HandsReaderTest {
    private static final double QUIET = 0.9 * GripCurves.LIMIT_USE;
    private static final double NEAR = 1.1 * GripCurves.LIMIT_USE;
    private static final double BEYOND = 1.5 * GripCurves.LIMIT_USE;

    @Test
    void a_correction_or_a_hold_answers_a_rear_near_its_peak() {
        assertThat(HandsReader.cause(Kind.CORRECTION, QUIET, NEAR)).isEqualTo(Cause.REAR);
        assertThat(HandsReader.cause(Kind.HOLD, NEAR, BEYOND)).isEqualTo(Cause.REAR);
    }

    @Test
    void winding_on_answers_a_front_near_its_peak() {
        assertThat(HandsReader.cause(Kind.WIND_ON, BEYOND, QUIET)).isEqualTo(Cause.FRONT);
        assertThat(HandsReader.cause(Kind.WIND_ON, QUIET, BEYOND)).isEqualTo(Cause.DRIVER);
        assertThat(HandsReader.cause(Kind.CORRECTION, BEYOND, QUIET)).isEqualTo(Cause.DRIVER);
    }

    @Test
    void hands_without_an_axle_near_its_peak_are_the_driver() {
        for (Kind kind : Kind.values()) {
            assertThat(HandsReader.cause(kind, QUIET, QUIET)).isEqualTo(Cause.DRIVER);
        }
    }

    @Test
    void where_nothing_is_known_nothing_is_said() {
        assertThat(HandsReader.cause(Kind.CORRECTION, Double.NaN, NEAR)).isEqualTo(Cause.UNKNOWN);
    }
}
