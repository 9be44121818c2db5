package setwright.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class DifferenceTest {
    /**
     * Two samples of five with equal sizes: the pooled and Welch's statistic are then the same, 5.1868 for a difference of 0.3220
     * (reference values computed with an independent script); pooled, 8 degrees of freedom, t(0.975) = 2.3060 (any table).
     */
    @Test
    void twoGroupsGiveStudentsInterval() {
        List<Double> a = List.of(92.31, 92.18, 92.44, 92.25, 92.37);
        List<Double> b = List.of(91.98, 92.05, 91.87, 92.11, 91.93);
        Difference difference = Difference.of(List.of(b, a), -1.0, 1.0);
        assertThat(difference.value()).isCloseTo(0.3220, within(1.0e-4));
        double error = 0.3220 / 5.1868;
        assertThat(difference.high() - difference.value()).isCloseTo(2.3060 * error, within(1.0e-4));
        assertThat(difference.value() - difference.low()).isCloseTo(2.3060 * error, within(1.0e-4));
    }

    /** A/B/A with five laps each and a known deviation of 0.2: standard error 0.10954 (references: var s^2 (1/5 + 1/20 + 1/20)). */
    @Test
    void beforeChangedBeforeTakesOutALinearDrift() {
        List<Double> first = List.of(10.0, 10.2, 9.8, 10.1, 9.9);
        List<Double> second = first.stream().map(x -> x + 0.5 - 0.3).toList();
        List<Double> third = first.stream().map(x -> x + 1.0).toList();
        Difference difference = Difference.of(List.of(first, second, third), -0.5, 1.0, -0.5);
        assertThat(difference.value()).isCloseTo(-0.3, within(1.0e-12));
        double deviation = Math.sqrt(0.1 / 4.0);
        double error = deviation * Math.sqrt(0.2 + 0.05 + 0.05);
        assertThat(0.2 * Math.sqrt(0.3)).isCloseTo(0.10954, within(1.0e-5));
        // t(0.975) with 12 degrees of freedom is 2.1788 (any table)
        assertThat(difference.high() - difference.value()).isCloseTo(2.1788 * error, within(1.0e-4));
    }

    @Test
    void oneLapTellsNothing() {
        Difference difference = Difference.of(List.of(List.of(1.0), List.of(2.0)), -1.0, 1.0);
        assertThat(difference.value()).isEqualTo(1.0);
        assertThat(difference.low()).isNegative().isInfinite();
    }
}
