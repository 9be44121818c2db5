package setwright.core.car.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.exception.MathIllegalArgumentException;
import org.junit.jupiter.api.Test;

final class CarBeliefTest {
    private static final long SEED = 20_261_202L;
    private static final int DRAWS = 40_000;

    private final double[] middle = {1.0, -2.0, 0.5};
    private final double[][] covariance = {{4.0, 1.2, 0.0}, {1.2, 1.0, -0.3}, {0.0, -0.3, 0.25}};
    private final CarBelief belief = new CarBelief(middle, covariance);

    @Test
    void drawsHaveTheGivenMiddleAndCovariance() {
        double[][] draws = belief.draw(DRAWS, SEED);
        for (int i = 0; i < 3; i++) {
            // five standard errors of a mean
            assertThat(mean(draws, i))
                    .as("seed %d", SEED)
                    .isCloseTo(middle[i], within(5.0 * Math.sqrt(covariance[i][i] / DRAWS)));
            for (int k = 0; k < 3; k++) {
                double sum = 0.0;
                for (double[] draw : draws) {
                    sum += (draw[i] - middle[i]) * (draw[k] - middle[k]);
                }
                // five standard errors of a covariance of normal values
                double error =
                        Math.sqrt((covariance[i][i] * covariance[k][k] + covariance[i][k] * covariance[i][k]) / DRAWS);
                assertThat(sum / DRAWS).as("seed %d", SEED).isCloseTo(covariance[i][k], within(5.0 * error));
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameCars() {
        assertThat(belief.draw(5, SEED)).isDeepEqualTo(belief.draw(5, SEED));
        assertThat(belief.draw(5, SEED)[0]).isNotEqualTo(belief.draw(5, SEED + 1)[0]);
        assertThat(belief.draw(9, SEED)[4]).isEqualTo(belief.draw(5, SEED)[4]);
    }

    @Test
    void spreadIsTheRootOfTheVariance() {
        assertThat(belief.spread(Parameter.values()[0])).isEqualTo(2.0);
        assertThat(belief.middle(Parameter.values()[1])).isEqualTo(-2.0);
    }

    @Test
    void whatIsNoCovarianceIsRefused() {
        assertThatThrownBy(() -> new CarBelief(new double[2], new double[][] {{1.0, 2.0}, {2.0, 1.0}}))
                .isInstanceOf(MathIllegalArgumentException.class);
    }

    private static double mean(double[][] draws, int index) {
        double sum = 0.0;
        for (double[] draw : draws) {
            sum += draw[index];
        }
        return sum / draws.length;
    }
}
