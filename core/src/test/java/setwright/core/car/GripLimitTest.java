package setwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class GripLimitTest {

    @ParameterizedTest
    @CsvSource({"NONE, 1.2, 0.0", "MODERATE, 1.4, 0.0010", "STRONG, 1.5, 0.0030", "STRONG, 1.3, 0.0020"})
    void findsTheLimitThatTheDriverNearlyReaches(Downforce words, double friction, double lift) {
        long seed = 3L;
        Random random = new Random(seed);
        int n = 20_000;
        double[] speed = new double[n];
        double[] lateral = new double[n];
        double[] forward = new double[n];
        GripLimit truth = new GripLimit(friction, lift);
        for (int i = 0; i < n; i++) {
            speed[i] = 15.0 + 60.0 * random.nextDouble();
            // most of a lap is not at the limit; a tenth of it is, at nine tenths of the grip
            double use = random.nextDouble() < 0.1 ? 0.9 : 0.9 * random.nextDouble();
            lateral[i] = use * truth.at(speed[i]);
        }

        GripLimit fit = GripLimit.fit(speed, lateral, forward, words);

        double tenPercent = 0.1;
        for (double v : new double[] {20.0, 40.0, 60.0}) {
            assertThat(fit.at(v) / truth.at(v)).as("seed %d, %s m/s", seed, v).isCloseTo(1.0, within(tenPercent));
        }
    }
}
