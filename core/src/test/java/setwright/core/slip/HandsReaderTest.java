package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.handling.Phase;
import setwright.core.slip.HandsReading.Cause;

final class HandsReaderTest {
    private static final double QUIET = 0.9 * GripCurves.LIMIT_USE;
    private static final double NEAR = 1.05 * GripCurves.LIMIT_USE;
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
    void lock_is_wound_on_in_vain_only_where_the_doubt_of_the_peak_leaves_no_other_answer() {
        assertThat(HandsReader.cause(Kind.WIND_ON, NEAR, QUIET)).isEqualTo(Cause.DRIVER);
        assertThat(HandsReader.cause(Kind.WIND_ON, HandsReader.SURE_LIMIT, QUIET))
                .isEqualTo(Cause.FRONT);
    }

    @Test
    void holds_and_winding_on_are_borne_out_by_an_axle_only() {
        assertThat(reading(Kind.HOLD, Cause.REAR).borneOut()).isTrue();
        assertThat(reading(Kind.HOLD, Cause.DRIVER).borneOut()).isFalse();
        assertThat(reading(Kind.WIND_ON, Cause.FRONT).borneOut()).isTrue();
        assertThat(reading(Kind.WIND_ON, Cause.UNKNOWN).borneOut()).isFalse();
        assertThat(reading(Kind.CORRECTION, Cause.DRIVER).borneOut()).isTrue();
    }

    private static HandsReading reading(Kind kind, Cause cause) {
        return new HandsReading(1, 1, new HandsEvent(kind, Phase.MID, 100.0, 10.0, 0.3, 0.1), cause, QUIET, QUIET);
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
