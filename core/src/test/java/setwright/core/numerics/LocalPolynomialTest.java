package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LocalPolynomialTest {

    @Test
    void polynomialsOfItsDegreeComeBackExactlyEvenAtEdgesAndGaps() {
        long seed = 20_260_102L;
        Random random = new Random(seed);
        for (int trial = 0; trial < 50; trial++) {
            int degree = 1 + random.nextInt(4);
            double[] c = random.doubles(degree + 1, -1.0, 1.0).toArray();
            double step = 0.01 + random.nextDouble();
            double[] y = new double[60];
            double[] slope = new double[60];
            for (int i = 0; i < y.length; i++) {
                double t = (i - 30) * step;
                for (int k = degree; k >= 0; k--) {
                    slope[i] = slope[i] * t + y[i];
                    y[i] = y[i] * t + c[k];
                }
            }
            y[20] = Double.NaN;
            LocalPolynomial fit = LocalPolynomial.of(4, degree);
            double[] smooth = fit.smooth(y);
            double[] derivative = fit.derivative(y, step);
            for (int i = 0; i < y.length; i++) {
                if (i == 20) {
                    assertThat(smooth[i]).isNaN();
                    assertThat(derivative[i]).isNaN();
                } else {
                    double roundOff = 1.0e-8 * (1.0 + Math.abs(y[i]) + Math.abs(slope[i]));
                    assertThat(smooth[i]).as("seed %d trial %d", seed, trial).isCloseTo(y[i], within(roundOff));
                    assertThat(derivative[i])
                            .as("seed %d trial %d", seed, trial)
                            .isCloseTo(slope[i], within(roundOff));
                }
            }
        }
    }

    @Test
    void threadsMayShareOne() {
        long seed = 20_261_128L;
        Random random = new Random(seed);
        double[] gappy = new double[4_000];
        for (int i = 0; i < gappy.length; i++) {
            gappy[i] = random.nextInt(12) == 0 ? Double.NaN : random.nextGaussian();
        }
        for (int trial = 0; trial < 200; trial++) {
            int halfWidth = 2 + trial % 20; // each asks for many windows, whose weights nobody has worked out yet
            double[] alone = LocalPolynomial.of(halfWidth, 2).derivative(gappy, 0.01);
            LocalPolynomial shared = LocalPolynomial.of(halfWidth, 2);
            List<double[]> together = IntStream.range(0, 4)
                    .parallel()
                    .mapToObj(k -> shared.derivative(gappy, 0.01))
                    .toList();
            assertThat(together)
                    .as("seed %d trial %d", seed, trial)
                    .allSatisfy(each -> assertThat(each).isEqualTo(alone));
        }
    }

    @Test
    void aLoneSampleHasNoSlope() {
        double[] lone = {Double.NaN, 2.0, Double.NaN};
        assertThat(LocalPolynomial.of(2, 2).smooth(lone)[1]).isEqualTo(2.0);
        assertThat(LocalPolynomial.of(2, 2).derivative(lone, 0.1)[1]).isNaN();
    }

    @Test
    void refusesMoreCoefficientsThanSamples() {
        assertThatThrownBy(() -> LocalPolynomial.of(1, 3)).isInstanceOf(IllegalArgumentException.class);
    }
}
