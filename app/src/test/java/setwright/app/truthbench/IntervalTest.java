package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.scoreboard.Count;

final class IntervalTest {

    /** R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17, 1998, table I (from memory). */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2527, 0.3676", "15, 148, 0.0578, 0.1617", "0, 20, 0.0000, 0.1684", "1, 29, 0.0009, 0.1776"})
    void exactIntervalsAreThePublishedOnes(int hit, int of, double low, double high) {
        Interval interval = Interval.of(new Count(hit, of));
        assertThat(interval.low()).isCloseTo(low, within(6.0e-5));
        assertThat(interval.high()).isCloseTo(high, within(6.0e-5));
    }

    @Test
    void withoutACaseAnythingIsPossible() {
        assertThat(Interval.of(new Count(0, 0))).isEqualTo(new Interval(0.0, 1.0));
    }
}
