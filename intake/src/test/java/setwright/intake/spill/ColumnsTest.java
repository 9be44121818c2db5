package setwright.intake.spill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.intake.table.Numbers;

class ColumnsTest {
    private static final int WIDTH = 3;

    /** Blocks of all sizes, also empty ones; every way of asking. */
    @Test
    void theDiskGivesBackTheSameNumbersAsMemory() {
        Random random = new Random(20261127L);
        for (int trial = 0; trial < 20; trial++) {
            Columns held = new Columns(WIDTH, Long.MAX_VALUE);
            Columns spilled = new Columns(WIDTH, random.nextInt(2) * 5000L);
            for (int k = 0; k < 12; k++) {
                double[][] block = new double[WIDTH][random.nextInt(4) * random.nextInt(3000)];
                for (double[] column : block) {
                    for (int i = 0; i < column.length; i++) {
                        column[i] = random.nextInt(9) == 0 ? Double.NaN : random.nextGaussian();
                    }
                }
                spilled.add(copy(block));
                held.add(block);
            }
            compare(held.done(), spilled.done(), random);
        }
    }

    private static double[][] copy(double[][] block) {
        double[][] copy = new double[block.length][];
        for (int c = 0; c < block.length; c++) {
            copy[c] = block[c].clone();
        }
        return copy;
    }

    private static void compare(List<Numbers> held, List<Numbers> spilled, Random random) {
        assertThat(spilled).hasSameSizeAs(held);
        for (int c = 0; c < WIDTH; c++) {
            Numbers one = held.get(c);
            Numbers other = spilled.get(c);
            assertThat(other.size()).isEqualTo(one.size());
            assertThat(other.finiteCount()).isEqualTo(one.finiteCount());
            assertThat(Arrays.equals(other.copy(0, other.size()), one.copy(0, one.size())))
                    .isTrue();
            for (int k = 0; k < 50 && one.size() > 0; k++) {
                int from = random.nextInt(one.size());
                int to = from + random.nextInt(one.size() - from + 1);
                assertThat(Double.valueOf(other.get(from))).isEqualTo(Double.valueOf(one.get(from)));
                assertThat(Arrays.equals(other.copy(from, to), one.copy(from, to)))
                        .isTrue();
                Numbers part = other.part(from, to);
                assertThat(part.finiteCount()).isEqualTo(one.part(from, to).finiteCount());
                assertThat(Arrays.equals(part.copy(0, to - from), one.copy(from, to)))
                        .isTrue();
                if (to > from) {
                    assertThat(Double.valueOf(part.get(to - from - 1))).isEqualTo(Double.valueOf(one.get(to - 1)));
                }
            }
        }
    }
}
