package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Slope and interval through few points. */
final class SlopeIntervalTest {

    /**
     * Upper critical values of Kendall's S at the one-sided 2.5 % level: 10 of 10 pairs for n = 5, 13 of 15 for 6, 15 of 21 for 7,
     * 18 of 28 for 8, 23 of 45 for 10 (M. Hollander and D. A. Wolfe, Nonparametric Statistical Methods, table of K; values from
     * memory). Refused are inversions up to (pairs - S) / 2.
     */
    @Test
    void leavesOutAsManySlopesAsKendallsTableSays() {
        assertThat(SlopeInterval.outside(4)).isEqualTo(-1);
        assertThat(SlopeInterval.outside(5)).isEqualTo((10 - 10) / 2);
        assertThat(SlopeInterval.outside(6)).isEqualTo((15 - 13) / 2);
        assertThat(SlopeInterval.outside(7)).isEqualTo((21 - 15) / 2);
        assertThat(SlopeInterval.outside(8)).isEqualTo((28 - 18) / 2);
        assertThat(SlopeInterval.outside(10)).isEqualTo((45 - 23) / 2);
    }

    @Test
    void findsAnExactLineAndOneWildPointDoesNotBendIt() {
        double[] x = {0, 1, 2, 3, 4, 5, 6, 7};
        double[] y = {1, 3, 5, 7, 90, 11, 13, 15};

        assertThat(SlopeInterval.of(x, y).slope()).isEqualTo(2.0);
        assertThat(SlopeInterval.of(x, y).clear()).isTrue();
    }

    @Test
    void saysNothingWithFourPointsOrWithoutMovement() {
        assertThat(SlopeInterval.of(new double[] {0, 1, 2, 3}, new double[] {0, 1, 2, 3})
                        .clear())
                .isFalse();
        assertThat(SlopeInterval.of(new double[8], new double[8]).clear()).isFalse();
    }

    /** The interval holds the true slope in at least 95 % of all draws; a binomial error of three deviations is allowed for. */
    @Test
    void coversTheTruthAsOftenAsItSays() {
        long seed = 20_261_126L;
        Random random = new Random(seed);
        int covered = 0;
        int draws = 2_000;
        for (int d = 0; d < draws; d++) {
            double[] x = random.doubles(8).toArray();
            double[] y = new double[8];
            for (int i = 0; i < y.length; i++) {
                y[i] = 3.0 * x[i] + random.nextGaussian();
            }
            SlopeInterval fit = SlopeInterval.of(x, y);
            covered += fit.low() <= 3.0 && fit.high() >= 3.0 ? 1 : 0;
        }
        double threeDeviations = 3.0 * Math.sqrt(0.95 * 0.05 / draws);
        assertThat(covered / (double) draws).as("seed " + seed).isGreaterThan(0.95 - threeDeviations);
    }
}
