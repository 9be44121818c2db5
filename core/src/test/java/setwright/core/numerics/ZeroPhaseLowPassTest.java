package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ZeroPhaseLowPassTest {
    private static final double ROUND_OFF = 1.0e-9;

    @Test
    void levelAndSlopePassUnchangedUpToTheEdges() {
        double[] ramp = new double[200];
        for (int i = 0; i < ramp.length; i++) {
            ramp[i] = 3.0 + 0.25 * i;
        }
        double[] out = ZeroPhaseLowPass.butterworth(2, 2.0, 50.0).apply(ramp);
        // Away from the edges nothing moves; at the edges the odd extension keeps the slope.
        assertThat(out[100]).isCloseTo(ramp[100], within(1.0e-6));
        assertThat(out[0]).isCloseTo(ramp[0], within(1.0e-3));
        assertThat(out[199]).isCloseTo(ramp[199], within(1.0e-3));
    }

    @Test
    void gapsStayGapsAndDoNotLeak() {
        double[] signal = new double[100];
        Arrays.fill(signal, 0, 40, 5.0);
        Arrays.fill(signal, 40, 60, Double.NaN);
        Arrays.fill(signal, 60, 100, -7.0);
        double[] out = ZeroPhaseLowPass.butterworth(4, 5.0, 50.0).apply(signal);
        for (int i = 0; i < 100; i++) {
            if (i < 40) {
                assertThat(out[i]).isCloseTo(5.0, within(ROUND_OFF));
            } else if (i < 60) {
                assertThat(out[i]).isNaN();
            } else {
                assertThat(out[i]).isCloseTo(-7.0, within(ROUND_OFF));
            }
        }
    }

    @Test
    void aLoneSampleIsKept() {
        double[] out = ZeroPhaseLowPass.butterworth(2, 5.0, 50.0).apply(new double[] {Double.NaN, 4.0, Double.NaN});
        assertThat(out[1]).isCloseTo(4.0, within(ROUND_OFF));
        assertThat(out[0]).isNaN();
    }

    @Test
    void timeReversalCommutesWithFiltering() {
        long seed = 20_260_101L;
        Random random = new Random(seed);
        double[] signal = random.doubles(500, -1.0, 1.0).toArray();
        double[] reversed = reversed(signal);
        ZeroPhaseLowPass filter = ZeroPhaseLowPass.butterworth(2, 3.0, 50.0);
        double[] one = filter.apply(signal);
        double[] other = reversed(filter.apply(reversed));
        // Forward-backward and backward-forward differ only by how transients at the padded edges die.
        for (int i = 50; i < 450; i++) {
            assertThat(one[i]).as("seed %d, sample %d", seed, i).isCloseTo(other[i], within(1.0e-3));
        }
    }

    private static double[] reversed(double[] values) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = values[values.length - 1 - i];
        }
        return out;
    }

    @Test
    void refusesACutoffAboveHalfTheRate() {
        assertThatThrownBy(() -> ZeroPhaseLowPass.butterworth(2, 30.0, 50.0)).hasMessageContaining("30.0 Hz");
        assertThatThrownBy(() -> ZeroPhaseLowPass.butterworth(3, 3.0, 50.0)).hasMessageContaining("order");
    }
}
