package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RobustTest {

    @Test
    void scaledMadOfNormalNoiseIsItsStandardDeviation() {
        long seed = 20_260_103L;
        Random random = new Random(seed);
        double[] noise = new double[20_000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = 5.0 + 2.0 * random.nextGaussian();
        }
        // Standard error of the scaled MAD is 1.167 sigma / sqrt(n) = 0.0165; four of them.
        assertThat(Robust.scaledMad(noise)).as("seed %d", seed).isCloseTo(2.0, within(0.066));
        assertThat(Robust.median(noise)).isCloseTo(5.0, within(0.075));
    }

    @Test
    void aFifthOfWildSamplesDoesNotSpoilARegression() {
        long seed = 20_260_104L;
        Random random = new Random(seed);
        int count = 2000;
        double[] ones = new double[count];
        Arrays.fill(ones, 1.0);
        double[] x = new double[count];
        double[] z = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = random.nextGaussian();
            z[i] = 1000.0 * random.nextGaussian();
            y[i] = 2.0 + 3.0 * x[i] - 0.004 * z[i] + 0.1 * random.nextGaussian();
            if (i % 5 == 0) {
                y[i] += i % 2 == 0 ? 50.0 : -50.0;
            }
        }
        y[7] = Double.NaN;
        Robust.Fit fit = Robust.regress(new double[][] {ones, x, z}, y);
        // Wild samples on both sides cancel in Huber's estimate; noise leaves 0.1 / sqrt(2000), taken four times and
        // doubled.
        assertThat(fit.coefficient(0)).as("seed %d", seed).isCloseTo(2.0, within(0.02));
        assertThat(fit.coefficient(1)).isCloseTo(3.0, within(0.02));
        assertThat(fit.coefficient(2)).isCloseTo(-0.004, within(2.0e-5));
        assertThat(fit.count()).isEqualTo(count - 1);
    }

    @Test
    void standardErrorsCoverTheTruth() {
        long seed = 20_260_105L;
        Random random = new Random(seed);
        int inside = 0;
        for (int trial = 0; trial < 400; trial++) {
            double[] ones = new double[50];
            Arrays.fill(ones, 1.0);
            double[] y = new double[50];
            for (int i = 0; i < y.length; i++) {
                y[i] = random.nextGaussian();
            }
            Robust.Fit fit = Robust.regress(new double[][] {ones}, y);
            inside += Math.abs(fit.coefficient(0)) < 1.96 * fit.standardError(0) ? 1 : 0;
        }
        // 95 % of 400 is 380; standard deviation of a binomial 4.4, and the scale estimate of 50 samples adds some.
        assertThat(inside).as("seed %d", seed).isBetween(355, 395);
    }

    @Test
    void theilSenIgnoresAQuarterOfWildPoints() {
        double[] x = new double[40];
        double[] y = new double[40];
        for (int i = 0; i < 40; i++) {
            x[i] = i;
            y[i] = i % 4 == 0 ? 1000.0 : 1.0 + 0.5 * i;
        }
        Robust.Line line = Robust.theilSen(x, y);
        assertThat(line.slope()).isCloseTo(0.5, within(0.02));
    }

    @Test
    void refusesWhatCannotBeFitted() {
        double[] two = {1.0, 2.0};
        assertThatThrownBy(() -> Robust.regress(new double[][] {{1, 1}, two}, two))
                .hasMessageContaining("needs more than 2 samples");
        assertThatThrownBy(() -> Robust.regress(new double[][] {{1, 1, 1}, {2, 2, 2}}, new double[] {1, 2, 3}))
                .hasMessageContaining("do not differ");
    }

    @Test
    void nothingGivesNaN() {
        assertThat(Robust.median(new double[] {Double.NaN})).isNaN();
        assertThat(Robust.theilSen(new double[] {1, 1}, new double[] {2, 3}).slope())
                .isNaN();
    }

    /** The mean over many small normal samples is the standard deviation, to the accuracy of the published factors. */
    @org.junit.jupiter.params.ParameterizedTest
    @org.junit.jupiter.params.provider.ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 12, 15, 40})
    void qnIsTheStandardDeviationOfNormalSamples(int n) {
        long seed = 20_261_125L + n;
        java.util.Random random = new java.util.Random(seed);
        double sum = 0.0;
        int samples = 20_000;
        for (int k = 0; k < samples; k++) {
            double[] values = new double[n];
            for (int i = 0; i < n; i++) {
                values[i] = 10.0 + 3.0 * random.nextGaussian();
            }
            sum += Robust.qn(values) / samples;
        }
        double threePercent = 0.09;
        org.assertj.core.api.Assertions.assertThat(sum)
                .as("seed %d", seed)
                .isCloseTo(3.0, org.assertj.core.api.Assertions.within(threePercent));
    }

    @Test
    void qnStandsUpToWildValues() {
        double[] values = {1.0, 1.1, 0.9, 1.05, 0.95, 1.02, 500.0, -800.0};
        org.assertj.core.api.Assertions.assertThat(Robust.qn(values)).isLessThan(0.3);
    }
}
