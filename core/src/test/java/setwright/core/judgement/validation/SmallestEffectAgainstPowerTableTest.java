package setwright.core.judgement.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.judgement.SmallestEffect;

/**
 * Source: two-sample t test, two-sided 5 % level, 80 % power, exact by the non-central t distribution; the sample sizes
 * of the same computation agree with a published power table (MRC Cognition and Brain Sciences Unit, Cambridge).
 */
final class SmallestEffectAgainstPowerTableTest {
    /** Two percent: what the closed approximation differs from the exact value by at the smallest sample. */
    private static final double APPROXIMATION = 0.02;

    @ParameterizedTest
    @CsvSource({"3, 3.071", "4, 2.381", "5, 2.024", "6, 1.796", "8, 1.507", "10, 1.325", "15, 1.060", "20, 0.909"})
    void agreesWithTheExactValue(int perGroup, double deviations) {
        assertThat(SmallestEffect.inDeviations(perGroup)).isCloseTo(deviations, within(APPROXIMATION * deviations));
    }
}
