package setwright.core.judgement.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.judgement.ScatterInterval;

/** Source: chi-square interval of a normal standard deviation, 95 %, as in any table of the distribution. */
final class ScatterIntervalAgainstTableTest {
    private static final double HALF_LAST_PRINTED_DIGIT = 5.0e-4;

    @ParameterizedTest
    @CsvSource({"3, 0.521, 6.285", "5, 0.599, 2.874", "8, 0.661, 2.035", "10, 0.688, 1.826", "20, 0.760, 1.461"})
    void agreesWithTheTable(int count, double lower, double upper) {
        assertThat(ScatterInterval.lowerFactor(count)).isCloseTo(lower, within(HALF_LAST_PRINTED_DIGIT));
        assertThat(ScatterInterval.upperFactor(count)).isCloseTo(upper, within(HALF_LAST_PRINTED_DIGIT));
    }
}
