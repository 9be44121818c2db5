package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class WeightedMedianTest {
    private static final double ROUND_OFF = 1.0e-9;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 31, 100})
    void equalWeightsGiveTheUsualMedian(int count) {
        double[] values = new Random(count).doubles(count, -100.0, 100.0).toArray();
        WeightedMedian median = new WeightedMedian();
        for (double value : values) {
            median.add(value, 0.7);
        }
        assertThat(median.value()).isEqualTo(Robust.median(values), within(ROUND_OFF));
    }

    @Test
    void oneThatWeighsMoreThanAllOthersIsNearlyIt() {
        WeightedMedian median = new WeightedMedian();
        median.add(1.0, 1.0);
        median.add(2.0, 100.0);
        median.add(50.0, 1.0);
        assertThat(median.value()).isEqualTo(2.0, within(ROUND_OFF));
    }

    @Test
    void oneWildValueMovesLittle() {
        WeightedMedian median = new WeightedMedian();
        for (double value : new double[] {0.1, 0.2, 0.3, 0.4}) {
            median.add(value, 1.0);
        }
        median.add(-1_000.0, 0.5);
        assertThat(median.value()).isBetween(0.1, 0.3);
    }

    @Test
    void whatWeighsNothingCountsForNothing() {
        WeightedMedian median = new WeightedMedian();
        assertThat(median.value()).isNaN();
        median.add(7.0, 0.0);
        assertThat(median.value()).isNaN();
        median.add(3.0, 2.0);
        assertThat(median.value()).isEqualTo(3.0);
    }
}
