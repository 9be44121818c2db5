package setwright.intake.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

final class DateLineTest {
    private static final Offset<Double> ROUND_OFF = within(1.0e-9);

    @Test
    void takesOutTheJumpBothWaysAndKeepsGaps() {
        double[] longitudes = {179.9, Double.NaN, -179.9, -179.8, 179.95, 179.9};
        assertThat(DateLine.unwrapped(longitudes, 360.0))
                .containsExactly(new double[] {179.9, Double.NaN, 180.1, 180.2, 179.95, 179.9}, ROUND_OFF);
    }

    @Test
    void leavesOthersAlone() {
        double[] longitudes = {-0.1, 0.1, 12.0, -90.0};
        assertThat(DateLine.unwrapped(longitudes, 360.0)).containsExactly(longitudes);
    }
}
