package setwright.core.simulation.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class LapTruthTest {

    @Test
    void the_out_lap_and_a_lap_with_a_mistake_do_not_count() {
        assertThat(FlyingLaps.clean(List.of(110.0, 90.0, 90.2, 94.0, 90.1, 89.9)))
                .containsExactly(1, 2, 4, 5);
        assertThat(FlyingLaps.clean(List.of(110.0))).isEmpty();
    }

    @Test
    void an_unsteady_driver_keeps_the_laps_that_show_it() {
        List<Double> laps = List.of(110.0, 90.0, 92.5, 88.4, 91.7, 89.0, 93.0);
        assertThat(FlyingLaps.clean(laps)).hasSize(6);
        assertThat(TrueDriving.of(laps).consistent()).isFalse();
    }

    @Test
    void scatter_is_the_standard_deviation_over_the_mean() {
        // deviations -0.3, -0.1, 0.1, 0.3: squares add up to 0.2, over three
        TrueDriving driving = TrueDriving.of(List.of(120.0, 99.7, 99.9, 100.1, 100.3));
        assertThat(driving.deviationShare()).isCloseTo(Math.sqrt(0.2 / 3.0) / 100.0, within(1.0e-9));
        assertThat(driving.consistent()).isTrue();
    }

    @Test
    void the_price_compares_lap_with_lap() {
        TruePrice price = TruePrice.of(List.of(110.0, 90.5, 90.7, 90.9), List.of(109.0, 90.1, 90.4, 90.4));
        assertThat(price.seconds()).isCloseTo(0.4, within(1.0e-9));
        assertThat(price.errorS()).isCloseTo(0.1 / Math.sqrt(3.0), within(1.0e-9));
    }
}
