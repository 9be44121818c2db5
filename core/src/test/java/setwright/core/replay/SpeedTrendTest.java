package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class SpeedTrendTest {

    @Test
    void risesToTheFastestPointAndFallsToTheSlowest() {
        assertThat(SpeedTrend.rising(Moments.speeds(30, 40, 50, 40, 30, 20, 30, 40)))
                .containsExactly(true, true, true, false, false, false, true, true);
    }

    @Test
    void aRippleIsNoTrend() {
        assertThat(SpeedTrend.rising(Moments.speeds(30, 40, 39.5, 45, 50, 49.2, 50.5)))
                .containsOnly(true);
        assertThat(SpeedTrend.rising(Moments.speeds(50, 40, 40.5, 35, 30)))
                .containsExactly(true, false, false, false, false);
    }

    @Test
    void constantSpeedCountsAsRising() {
        assertThat(SpeedTrend.rising(Moments.speeds(30, 30, 30))).containsOnly(true);
    }
}
