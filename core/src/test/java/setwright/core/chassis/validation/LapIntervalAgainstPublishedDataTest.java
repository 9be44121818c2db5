package setwright.core.chassis.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.chassis.LapInterval;

/**
 * Sleep gained with two drugs by ten patients, the second less the first: Student, Biometrika 6 (1908) 1-25. The mean difference is 1.58
 * hours; the 95 % interval that statistics packages print for it is 0.7001 to 2.4599 (value from memory).
 */
class LapIntervalAgainstPublishedDataTest {
    private static final double[] HOURS = {1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4};

    @Test
    void isStudents() {
        LapInterval interval = LapInterval.of(HOURS);
        double halfLastPrintedDigit = 0.5e-4;
        assertThat(interval.mean()).isCloseTo(1.58, within(1.0e-12));
        assertThat(interval.low()).isCloseTo(0.7001, within(halfLastPrintedDigit));
        assertThat(interval.high()).isCloseTo(2.4599, within(halfLastPrintedDigit));
    }
}
