package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.numerics.Robust;

class MediansWithoutOneTest {
    /** With ties, gaps and places that hardly anyone has. */
    @Test
    void areThoseOfTheOthersTakenAnew() {
        Random random = new Random(20261127L);
        for (int trial = 0; trial < 200; trial++) {
            int count = 1 + random.nextInt(9);
            double[][] series = new double[count][12];
            for (double[] one : series) {
                for (int i = 0; i < one.length; i++) {
                    one[i] = random.nextInt(4) == 0 ? Double.NaN : random.nextInt(6) / 3.0;
                }
            }
            MediansWithoutOne medians = new MediansWithoutOne(series);
            for (int left = 0; left < count; left++) {
                double[] found = medians.without(left);
                for (int i = 0; i < found.length; i++) {
                    int out = left;
                    int place = i;
                    double[] others = IntStream.range(0, count)
                            .filter(k -> k != out)
                            .mapToDouble(k -> series[k][place])
                            .toArray();
                    assertThat(Double.valueOf(found[i])).isEqualTo(Double.valueOf(Robust.median(others)));
                }
            }
        }
    }
}
