package setwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;

class AlignmentTest {
    private static final int CELLS = 600;
    private static final int REACH = 12;

    @Test
    void finds_a_slowly_growing_shift_in_noise() {
        Random random = new Random(5);
        double[] reference = new double[CELLS];
        double[] signal = new double[CELLS + 2 * REACH];
        for (int i = 0; i < CELLS; i++) {
            reference[i] = curve(i);
        }
        for (int i = 0; i < signal.length; i++) {
            double cell = i - REACH;
            signal[i] = curve(cell - 8.0 * cell / CELLS) + 0.05 * random.nextGaussian();
        }
        int[] shift = Alignment.shifts(signal, reference, REACH, 0.05, 20.0, false);
        for (int i = 50; i < CELLS - 50; i++) {
            assertThat((double) shift[i]).isBetween(8.0 * i / CELLS - 1.5, 8.0 * i / CELLS + 1.5);
        }
    }

    @Test
    void a_tied_alignment_begins_and_ends_at_zero() {
        double[] reference = new double[CELLS];
        double[] signal = new double[CELLS + 2 * REACH];
        for (int i = 0; i < CELLS; i++) {
            reference[i] = curve(i);
        }
        for (int i = 0; i < signal.length; i++) {
            signal[i] = curve(i - REACH - 4.0);
        }
        int[] shift = Alignment.shifts(signal, reference, REACH, 0.05, 20.0, true);
        assertThat(shift[0]).isZero();
        assertThat(shift[CELLS - 1]).isZero();
        assertThat(shift[CELLS / 2]).isEqualTo(4);
    }

    @Test
    void refuses_a_signal_without_margins() {
        assertThatThrownBy(() -> Alignment.shifts(new double[10], new double[10], 2, 1.0, 1.0, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("14 cells");
    }

    private static double curve(double cell) {
        return Math.sin(cell / 17.0) + Math.sin(cell / 41.0);
    }
}
