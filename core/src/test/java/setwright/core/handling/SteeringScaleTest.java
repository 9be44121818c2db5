package setwright.core.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Gentle cornering whose factor is known. */
final class SteeringScaleTest {
    private static final double WHEELBASE_M = 2.5;
    private static final double LIMIT_MPS2 = 15.0;
    private static final double PER_G = Math.toRadians(1.0) / 9.81;
    private static final int SAMPLES = 4_000;
    private static final double STRETCHES = 20.0;

    /** Drives between two speeds; the gradient changes by so much from one to the other, deg/g. */
    private static SteeringScale measure(long seed, double factor, double slow, double fast, double change) {
        Random random = new Random(seed);
        double[][] columns = new double[7][SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            double place = i * STRETCHES / SAMPLES;
            double share = 0.5 + 0.5 * Math.sin(2.3 * Math.floor(place));
            double speed = slow + (fast - slow) * share;
            double lateral = 0.55 * LIMIT_MPS2 * Math.sin(2.0 * Math.PI * place);
            double needed = WHEELBASE_M * lateral / (speed * speed);
            double gradient = PER_G * (0.5 + change * share);
            columns[0][i] = factor * (needed + gradient * lateral) + Math.toRadians(0.02) * random.nextGaussian();
            columns[1][i] = needed;
            columns[2][i] = lateral;
            columns[4][i] = LIMIT_MPS2;
            columns[5][i] = speed;
            columns[6][i] = 100.0 * place;
        }
        return SteeringScaleFit.of(columns[0], columns[1], columns[2], columns[3], columns[4], columns[5], columns[6]);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void findsTheFactorWhereSlowBendsTellIt(long seed) {
        SteeringScale scale = measure(seed, 1.6, 12.0, 50.0, 0.0);
        assertThat(scale.factor()).isCloseTo(1.6, within(0.05));
        assertThat(scale.error()).isLessThan(0.1);
        assertThat(scale.contradicts()).isTrue();
    }

    /** Without slow bends a gradient that changes with speed looks like a wrong ratio. */
    @ParameterizedTest
    @CsvSource({"1, 0.3", "2, 0.3", "1, -0.3", "2, -0.3"})
    void aGradientThatChangesWithSpeedIsWithinTheError(long seed, double change) {
        SteeringScale scale = measure(seed, 1.0, 38.0, 52.0, change);
        assertThat(Math.abs(scale.factor() - 1.0)).isGreaterThan(0.2).isLessThan(1.5 * scale.error());
        assertThat(scale.contradicts()).isFalse();
    }

    @Test
    void saysWhetherALapCouldShowARatioThatIsHalfOrTwiceTheCars() {
        assertThat(measure(4, 1.0, 12.0, 50.0, 0.0).checks()).isTrue();
        assertThat(measure(4, 1.0, 38.0, 52.0, 0.0).checks()).isFalse();
        assertThat(new SteeringScale(1.0, Double.POSITIVE_INFINITY, false).checks())
                .isFalse();
    }

    @Test
    void anAssumedRatioFollowsTheLapsAsFarAsTheyKnowBetter() {
        SteeringScale sure = new SteeringScale(1.5, 0.02, false).out();
        assertThat(sure.factor()).isCloseTo(1.5, within(0.01));
        assertThat(sure.takenOut()).isTrue();
        assertThat(sure.contradicts()).isFalse();

        SteeringScale unsure = new SteeringScale(1.5, 0.4, false).out();
        assertThat(unsure.factor()).isCloseTo(1.1, within(1.0e-9));
        assertThat(unsure.error()).isLessThan(0.2).isGreaterThan(0.15);
    }

    /** On a skid pad at one speed a ratio and a gradient are the same thing. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void oneSpeedTellsNothing(long seed) {
        SteeringScale scale = measure(seed, 1.6, 20.0, 20.0, 0.0);
        assertThat(scale.error()).isGreaterThan(1.0);
        assertThat(scale.contradicts()).isFalse();
    }

    @Test
    void tooFewGentleSamplesTellNothing() {
        double[] few = new double[50];
        SteeringScale scale = SteeringScaleFit.of(few, few, few, few, few, few, few);
        assertThat(scale.error()).isInfinite();
        assertThat(scale.contradicts()).isFalse();
    }
}
