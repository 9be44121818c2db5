package setwright.core.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Odds of sheets that were laid out in a known way. */
final class RangeLayoutTest {
    private static final int ITEMS = 20;

    private static double[] about(Random random, double deviation) {
        return DoubleStream.generate(random::nextGaussian)
                .map(normal -> deviation * normal)
                .filter(place -> Math.abs(place) <= 0.5)
                .limit(ITEMS)
                .toArray();
    }

    private static double[] with(double[] places, double... ends) {
        return DoubleStream.concat(DoubleStream.of(ends), DoubleStream.of(places))
                .limit(ITEMS)
                .toArray();
    }

    /** The nine sheets of the practice cases lie about as closely: deviations of 0.08 to 0.11 by their median. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anItemAtAnEndStandsOutAmongItemsNearTheMiddle(long seed) {
        RangeLayout layout = RangeLayout.of(with(about(new Random(seed), 0.09), 0.5, -0.4));
        assertThat(layout.tells()).isTrue();
        assertThat(layout.unusual(0.5)).isGreaterThan(0.97);
        assertThat(layout.unusual(-0.4)).isGreaterThan(0.95);
        assertThat(layout.unusual(0.0)).isLessThan(0.03);
        assertThat(layout.unusual(0.1)).isLessThan(0.1);
    }

    @Test
    void whatIsFurtherFromTheMiddleIsLessLikelyOrdinary() {
        RangeLayout layout = RangeLayout.of(new double[ITEMS]);
        assertThat(layout.unusual(0.0)).isLessThan(0.02);
        assertThat(layout.unusual(0.1)).isLessThan(0.1);
        assertThat(layout.unusual(0.22)).isBetween(0.3, 0.6);
        assertThat(layout.unusual(0.3)).isGreaterThan(0.9);
        assertThat(layout.unusual(-0.5)).isEqualTo(layout.unusual(0.5)).isGreaterThan(0.999);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void amongItemsThatStandAnywhereNoneStandsOut(long seed) {
        Random random = new Random(seed);
        RangeLayout layout = RangeLayout.of(random.doubles(ITEMS, -0.5, 0.5).toArray());
        assertThat(layout.tells()).isFalse();
        assertThat(layout.unusual(0.5)).isLessThan(0.5);
    }

    /** Some of these sheets happen to look closely laid out. */
    @Test
    void amongItemsThatStandLooselyAnItemHalfWayOutMostlyDoesNotStandOut() {
        int sheets = 40;
        long standsOut = LongStream.range(0, sheets)
                .mapToObj(seed -> RangeLayout.of(about(new Random(seed), 0.2)))
                .filter(layout -> layout.tells() && layout.unusual(0.3) > 0.5)
                .count();
        assertThat(standsOut).isLessThan(sheets / 5);
    }

    @Test
    void aLoneItemIsTakenAsCommonPracticeHasIt() {
        RangeLayout layout = RangeLayout.of(0.5);
        assertThat(layout.tells()).isTrue();
        assertThat(layout.unusual(0.5)).isBetween(0.5, 0.9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.1, 0.3, 0.5})
    void bothSidesAreAlike(double place) {
        RangeLayout layout = RangeLayout.of(0.02, -0.05, 0.07, 0.0);
        assertThat(layout.unusual(place)).isEqualTo(layout.unusual(-place)).isBetween(0.0, 1.0);
    }
}
