package setwright.core.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

final class CornerSlopeTest {
    private static final double[] LAPS =
            IntStream.rangeClosed(2, 11).mapToDouble(lap -> lap).toArray();

    /** Taking the lap out of both first is the same as a regression on both at once (R. Frisch and F. V. Waugh, Econometrica 1, 1933). */
    @Test
    void isTheSlopeBesideTheTrendOverTheLaps() {
        Random random = new Random(4);
        double[] lever = draw(random, 1.0);
        double[] size = new double[LAPS.length];
        double[][] both = new double[LAPS.length][];
        for (int i = 0; i < LAPS.length; i++) {
            size[i] = 0.4 * lever[i] + 0.2 * LAPS[i] + 0.3 * random.nextGaussian();
            both[i] = new double[] {lever[i], LAPS[i]};
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(size, both);
        CornerSlope slope = CornerSlope.of(1, LAPS, lever, size).orElseThrow();
        assertThat(slope.slope()).isCloseTo(regression.estimateRegressionParameters()[1], within(1.0e-9));
        assertThat(slope.error()).isCloseTo(regression.estimateRegressionParametersStandardErrors()[1], within(1.0e-9));
        assertThat(slope.freedom()).isEqualTo(7);
    }

    /** Tyres that wear while a driver brakes ever later are no lever. */
    @Test
    void whatOnlyDriftsTogetherIsNoSlope() {
        int clear = 0;
        Random random = new Random(5);
        for (int run = 0; run < 400; run++) {
            double[] lever = draw(random, 1.0);
            double[] size = draw(random, 1.0);
            for (int i = 0; i < LAPS.length; i++) {
                lever[i] += 3.0 * LAPS[i];
                size[i] += 2.0 * LAPS[i];
            }
            PooledSlope slope =
                    PooledSlope.of(CornerSlope.of(1, LAPS, lever, size).stream().toList());
            clear += slope.pValue(Direction.LESS) < 0.05 ? 1 : 0;
        }
        double fourDeviationsOfACountOf400AtFivePercent = 4.0 * Math.sqrt(0.05 * 0.95 * 400.0);
        assertThat((double) clear).isCloseTo(20.0, within(fourDeviationsOfACountOf400AtFivePercent));
    }

    @Test
    void tooFewPassesOrALeverThatStandsStillSayNothing() {
        double[] some = draw(new Random(6), 1.0);
        double[] gaps = some.clone();
        Arrays.fill(gaps, 4, gaps.length, Double.NaN);
        assertThat(CornerSlope.of(1, LAPS, gaps, some)).isEmpty();
        double[] still = new double[LAPS.length];
        Arrays.fill(still, 0.37);
        assertThat(CornerSlope.of(1, LAPS, still, some)).isEmpty();
        assertThat(CornerSlope.of(1, LAPS, some, still)).isEmpty();
    }

    private static double[] draw(Random random, double deviation) {
        return IntStream.range(0, LAPS.length)
                .mapToDouble(i -> deviation * random.nextGaussian())
                .toArray();
    }
}
