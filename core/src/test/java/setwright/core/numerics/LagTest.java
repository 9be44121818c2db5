package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class LagTest {

    @Test
    void knownLagsComeBackWithinATenthOfAStep() {
        long seed = 20_260_106L;
        Random random = new Random(seed);
        double step = 0.1;
        for (int trial = 0; trial < 40; trial++) {
            double lag = -1.5 + 3.0 * random.nextDouble();
            double turn = random.nextBoolean() ? 1.0 : -1.0;
            double[] phase = random.doubles(8, 0.0, 6.28).toArray();
            double[] first = new double[3000];
            double[] second = new double[3000];
            for (int i = 0; i < first.length; i++) {
                first[i] = wave(i * step, phase);
                second[i] = 7.0 + turn * 3.0 * wave(i * step - lag, phase);
            }
            first[100] = Double.NaN;
            Lag found = Lag.between(first, second, step, 2.0);
            assertThat(found.seconds()).as("seed %d trial %d", seed, trial).isCloseTo(lag, within(0.1 * step));
            assertThat(found.correlation() * turn).isGreaterThan(0.99);
            assertThat(found.atLimit()).isFalse();
        }
    }

    /** Incommensurable waves below 0.5 Hz. */
    private static double wave(double t, double[] phase) {
        double sum = 0.0;
        for (int k = 0; k < phase.length; k++) {
            sum += Math.sin(2.0 * Math.PI * (0.03 + 0.053 * k) * t + phase[k]);
        }
        return sum;
    }

    @Test
    void aLagBeyondTheRangeIsMarked() {
        double[] first = new double[400];
        double[] second = new double[400];
        for (int i = 0; i < first.length; i++) {
            first[i] = Math.exp(-Math.pow((i - 150) / 40.0, 2));
            second[i] = Math.exp(-Math.pow((i - 190) / 40.0, 2));
        }
        assertThat(Lag.between(first, second, 0.1, 2.0).atLimit()).isTrue();
    }

    /** Of signals of any length and with gaps, by the common samples of each shift alone. */
    @Test
    void everyShiftHasTheCorrelationOfItsCommonSamples() {
        long seed = 20_261_128L;
        Random random = new Random(seed);
        for (int trial = 0; trial < 60; trial++) {
            int size = 40 + random.nextInt(30);
            int most = random.nextInt(12);
            double[] first = noise(random, size);
            double[] second = noise(random, size);
            double[] profile = Lag.profile(first, second, most);
            assertThat(profile).hasSize(2 * most + 1);
            for (int shift = -most; shift <= most; shift++) {
                assertThat(profile[most + shift])
                        .as("seed %d trial %d shift %d", seed, trial, shift)
                        .isCloseTo(pearson(first, second, shift), within(1.0e-12));
            }
        }
    }

    /** A tenth of it missing. */
    private static double[] noise(Random random, int size) {
        double[] noise = new double[size];
        Arrays.setAll(noise, i -> random.nextInt(10) == 0 ? Double.NaN : 5.0 + random.nextGaussian());
        return noise;
    }

    private static double pearson(double[] first, double[] second, int shift) {
        int[] common = IntStream.range(Math.max(0, -shift), Math.min(first.length, second.length - shift))
                .filter(i -> Double.isFinite(first[i]) && Double.isFinite(second[i + shift]))
                .toArray();
        return new PearsonsCorrelation()
                .correlation(
                        Arrays.stream(common).mapToDouble(i -> first[i]).toArray(),
                        Arrays.stream(common)
                                .mapToDouble(i -> second[i + shift])
                                .toArray());
    }

    @Test
    void aConstantSaysNothing() {
        assertThat(Lag.between(new double[100], new double[100], 0.1, 1.0).correlation())
                .isZero();
    }
}
