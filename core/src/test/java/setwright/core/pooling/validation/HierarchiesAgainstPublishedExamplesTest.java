package setwright.core.pooling.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.pooling.NormalHierarchy;
import setwright.core.pooling.NormalHierarchy.Estimate;
import setwright.core.pooling.ShareHierarchy;
import setwright.core.pooling.ShareHierarchy.Count;

/** Worked examples of A. Gelman et al., Bayesian Data Analysis, chapter 5. All data and results are values from memory. */
final class HierarchiesAgainstPublishedExamplesTest {
    /** Coaching in eight schools, effect and standard error (D. B. Rubin, 1981). */
    private static final double[] EFFECTS = {28, 8, -3, 7, -1, 1, 18, 12};

    private static final double[] ERRORS = {15, 10, 16, 11, 9, 11, 10, 18};

    /** Tumours of rats, seen and of, in 70 earlier groups and the present one (table 5.1). */
    private static final int[] RATS = {
        0, 20, 0, 20, 0, 20, 0, 20, 0, 20, 0, 20, 0, 20, 0, 19, 0, 19, 0, 19, 0, 19, 0, 18, 0, 18, 0, 17, 1, 20, 1, 20,
        1, 20, 1, 20, 1, 19, 1, 19, 1, 18, 1, 18, 2, 25, 2, 24, 2, 23, 2, 20, 2, 20, 2, 20, 2, 20, 2, 20, 2, 20, 1, 10,
        5, 49, 2, 19, 5, 46, 3, 27, 2, 17, 7, 49, 7, 47, 3, 20, 3, 20, 2, 13, 9, 48, 10, 50, 4, 20, 4, 20, 4, 20, 4, 20,
        4, 20, 4, 20, 4, 20, 10, 48, 4, 19, 4, 19, 4, 19, 5, 22, 11, 46, 12, 49, 5, 20, 5, 20, 6, 23, 5, 19, 6, 22, 6,
        20, 6, 20, 6, 20, 16, 52, 15, 47, 15, 46, 9, 24, 4, 14
    };

    /** The classical test finds no spread between the schools; then the pooled effect is 7.7 with standard error 4.1. */
    @Test
    void eightSchoolsByTheMethodOfMoments() {
        assertThat(NormalHierarchy.spreadByMoments(EFFECTS, ERRORS)).isZero();
        Estimate pooled = NormalHierarchy.common(EFFECTS, ERRORS, 0.0);
        double halfLastPrintedDigit = 0.05;
        assertThat(pooled.value()).isCloseTo(7.7, within(halfLastPrintedDigit));
        assertThat(pooled.deviation()).isCloseTo(4.1, within(halfLastPrintedDigit));
    }

    /**
     * With a uniform prior on the spread, school A's 28 is drawn to about 11 (posterior median 10 in the book, the mean a little
     * above it), and its interval is wide; the schools' mean is about 8 with a deviation of about 5.
     */
    @Test
    void eightSchoolsWithAUniformPriorOnTheSpread() {
        NormalHierarchy schools = NormalHierarchy.of(EFFECTS, ERRORS, Double.POSITIVE_INFINITY);
        assertThat(schools.common().value()).isCloseTo(8.0, within(0.5));
        assertThat(schools.common().deviation()).isCloseTo(5.0, within(0.7));
        assertThat(schools.group(0).value()).isBetween(10.0, 12.5);
        assertThat(schools.group(0).deviation()).isCloseTo(8.3, within(1.2));
        assertThat(schools.group(2).value()).isBetween(5.0, 7.5);
        assertThat(schools.spread()).isBetween(5.5, 8.0);
    }

    /** The prior fitted to all groups is about beta(2.4, 14.3): mean 0.144; the present group's 4 of 14 is drawn to about 0.21. */
    @Test
    void ratTumours() {
        List<Count> counts = new ArrayList<>();
        for (int i = 0; i < RATS.length; i += 2) {
            counts.add(new Count(RATS[i], RATS[i + 1]));
        }
        assertThat(counts).hasSize(71);
        ShareHierarchy rats = ShareHierarchy.of(counts);
        assertThat(rats.mean()).isCloseTo(2.4 / (2.4 + 14.3), within(0.01));
        assertThat(rats.group(70)).isCloseTo((2.4 + 4.0) / (2.4 + 14.3 + 14.0), within(0.015));
    }
}
