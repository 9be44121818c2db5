package setwright.intake.mdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The search among cut ends against the plain reading of the standard: the first range that holds the number. */
class RangesTest {
    private static final long SEED = 20_261_128L;

    @Test
    void sameAsTryingEachRange() {
        Random random = new Random(SEED);
        for (int n = 0; n < 2000; n++) {
            int count = random.nextInt(7);
            double[] lower = new double[count];
            double[] upper = new double[count];
            for (int i = 0; i < count; i++) {
                lower[i] = random.nextInt(9) - 4;
                upper[i] = random.nextInt(20) == 0 ? Double.NaN : lower[i] + random.nextInt(5) - 1;
            }
            boolean closed = random.nextBoolean();
            Ranges ranges = new Ranges(lower, upper, closed);
            for (double raw = -6.0; raw <= 9.0; raw += 0.5) {
                assertThat(ranges.indexOf(raw))
                        .as("seed %d, table %d, raw %f", SEED, n, raw)
                        .isEqualTo(simply(lower, upper, closed, raw));
            }
        }
    }

    private static int simply(double[] lower, double[] upper, boolean closed, double raw) {
        for (int i = 0; i < lower.length; i++) {
            boolean end = raw == upper[i] && (closed || lower[i] == upper[i]);
            if (lower[i] <= raw && (raw < upper[i] || end)) {
                return i;
            }
        }
        return -1;
    }
}
