package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
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

    @Test
    void aConstantSaysNothing() {
        assertThat(Lag.between(new double[100], new double[100], 0.1, 1.0).correlation())
                .isZero();
    }
}
