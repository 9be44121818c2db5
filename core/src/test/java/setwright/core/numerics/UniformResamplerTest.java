package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class UniformResamplerTest {

    @Test
    void anyRisingTimeBaseGivesTheSameSlowWave() {
        long seed = 20_260_107L;
        Random random = new Random(seed);
        for (int trial = 0; trial < 30; trial++) {
            double[] times = new double[4000];
            double step = trial % 2 == 0 ? 0.01 : 0.02;
            for (int i = 1; i < times.length; i++) {
                // Jitter, and a rate that changes half way.
                double here = i < 2000 ? step : 0.5 * step;
                times[i] = times[i - 1] + here * (0.5 + random.nextDouble());
            }
            double[] values = new double[times.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = wave(times[i]);
            }
            UniformResampler resampler = UniformResampler.onto(times, 50.0, 0.1);
            double[] out = resampler.resample(values);
            assertThat(out).hasSize(resampler.count());
            // Straight lines over 0.03 s cut (0.03 w)^2 / 8 off a wave; the filter takes less than that at 0.4 Hz.
            for (int i = 30; i < out.length - 30; i++) {
                assertThat(out[i])
                        .as("seed %d trial %d sample %d", seed, trial, i)
                        .isCloseTo(wave(i / 50.0), within(2.0e-3));
            }
        }
    }

    private static double wave(double t) {
        return Math.sin(2.0 * Math.PI * 0.4 * t);
    }

    /** A mean over T cuts (w T)^2 / 24 off a wave: 1.1e-4 at 0.4 Hz over 0.02 s, and as much as what straight lines cut. */
    @Test
    void meansFollowASlowWaveAndKeepGaps() {
        for (int ratio : new int[] {2, 5, 13}) {
            double[] times = new double[800 * ratio];
            double[] values = new double[times.length];
            for (int i = 0; i < times.length; i++) {
                times[i] = i / (50.0 * ratio);
                values[i] = i >= 100 * ratio && i < 110 * ratio ? Double.NaN : wave(times[i]);
            }
            double[] out = UniformResampler.onto(times, 50.0, 0.05).means(values);
            for (int i = 1; i < out.length - 1; i++) {
                if (i >= 100 && i < 110) {
                    assertThat(out[i]).as("ratio %d sample %d", ratio, i).isNaN();
                } else if (i < 98 || i > 111) {
                    assertThat(out[i]).as("ratio %d sample %d", ratio, i).isCloseTo(wave(i / 50.0), within(2.0e-4));
                }
            }
        }
    }

    /** What would come back as standing still is gone: ten cycles a second, read ten times a second. */
    @Test
    void meansLeaveNothingThatWouldComeBackAsStandingStill() {
        double[] times = new double[1000];
        double[] values = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i / 100.0;
            values[i] = Math.cos(2.0 * Math.PI * 10.0 * times[i]);
        }
        double[] out = UniformResampler.onto(times, 10.0, 0.1).means(values);
        for (int i = 1; i < out.length - 1; i++) {
            assertThat(out[i]).isCloseTo(0.0, within(1.0e-12));
        }
    }

    @Test
    void itsOwnRateIsCopiedSampleBySample() {
        double[] times = {0.0, 0.02, 0.04, 0.06, 0.08};
        double[] values = {1.0, 4.0, -2.0, 8.0, 3.0};
        assertThat(UniformResampler.onto(times, 50.0, 0.1).resample(values)).containsExactly(values);
    }

    @Test
    void nothingIsInventedAcrossAGap() {
        double[] times = new double[100];
        for (int i = 0; i < 100; i++) {
            times[i] = i * 0.02 + (i >= 50 ? 0.5 : 0.0);
        }
        double[] values = new double[100];
        for (int i = 0; i < 100; i++) {
            values[i] = i == 20 ? Double.NaN : i >= 30 && i < 36 ? Double.NaN : 5.0;
        }
        double[] out = UniformResampler.onto(times, 50.0, 0.1).resample(values);
        assertThat(out[20]).as("one missing sample is bridged").isEqualTo(5.0);
        assertThat(out[33]).as("six missing samples, 0.14 s, are not").isNaN();
        assertThat(out[60]).as("half a second without rows").isNaN();
        assertThat(out[49]).isEqualTo(5.0);
        assertThat(out[76]).isEqualTo(5.0);
    }

    @Test
    void whatIsAboveTheNewNyquistFrequencyIsGone() {
        double[] times = new double[4000];
        double[] values = new double[4000];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 0.001;
            values[i] = Math.sin(2.0 * Math.PI * 95.0 * times[i]);
        }
        double[] out = UniformResampler.onto(times, 100.0, 0.1).resample(values);
        // Unfiltered it would fold down to a full 5 Hz wave; |H|^2 at 95 Hz over 40 Hz of order 4 is below 1e-3.
        for (int i = 50; i < out.length - 50; i++) {
            assertThat(Math.abs(out[i])).isLessThan(2.0e-3);
        }
    }

    @Test
    void stepsAreHeldAndPulsesSurvive() {
        double[] times = new double[1000];
        double[] gear = new double[1000];
        double[] pulse = new double[1000];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 0.001;
            gear[i] = i < 500 ? 3.0 : 4.0;
        }
        pulse[733] = 1.0;
        UniformResampler resampler = UniformResampler.onto(times, 50.0, 0.1);
        assertThat(resampler.hold(gear)).containsOnly(3.0, 4.0);
        double[] out = resampler.peak(pulse);
        assertThat(out[37]).isEqualTo(1.0);
        assertThat(out).containsOnlyOnce(1.0);
    }

    @Test
    void refusesTimesThatFall() {
        assertThatThrownBy(() -> UniformResampler.onto(new double[] {0.0, 0.2, 0.1}, 10.0, 0.1))
                .hasMessageContaining("0.1");
    }
}
