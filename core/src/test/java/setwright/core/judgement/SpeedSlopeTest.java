package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceBelief.Estimate;
import setwright.core.standing.SetupStanding;

/** The slope of an invented deviation over v² comes back, and with it the cause. */
final class SpeedSlopeTest {
    private static final int LAPS = 8;
    private static final double[] SPEEDS = {15.0, 20.0, 25.0, 30.0, 38.0, 45.0, 52.0, 58.0};
    private static final double MEAN_SQUARE = meanSquare(SPEEDS);
    private static final double DEGREE = Math.toRadians(1.0);

    private static double meanSquare(double[] speeds) {
        double sum = 0.0;
        for (double speed : speeds) {
            sum += speed * speed / speeds.length;
        }
        return sum;
    }

    private static List<CornerPass> passes(double[] speeds, DoubleUnaryOperator excess, long seed) {
        Random random = new Random(seed);
        List<CornerPass> passes = new ArrayList<>();
        for (int corner = 1; corner <= speeds.length; corner++) {
            double speed = speeds[corner - 1];
            double unexplained = Math.toRadians(0.2) * random.nextGaussian();
            for (int lap = 1; lap <= LAPS; lap++) {
                double rad = excess.applyAsDouble(speed) + unexplained + Math.toRadians(0.1) * random.nextGaussian();
                passes.add(MidCorner.pass(lap, corner, speed, rad));
            }
        }
        return passes;
    }

    private static SpeedDependence dependence(List<CornerPass> passes, double levelRad) {
        Estimate level = new Estimate(levelRad, 0.1 * DEGREE);
        return SpeedSlope.of(passes, SetupStanding.unknown(), Phase.MID, level)
                .orElseThrow()
                .dependence();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whatGrowsAsLiftIsAerodynamic(long seed) {
        double slope = 1.5 * DEGREE / MEAN_SQUARE;
        SpeedDependence found = dependence(passes(SPEEDS, v -> slope * v * v, seed), 1.5 * DEGREE);
        assertThat(found.slopeRadPerM2S2()).isCloseTo(slope, within(0.25 * slope));
        assertThat(found.low()).isLessThan(slope);
        assertThat(found.high()).isGreaterThan(slope);
        assertThat(found.kind()).isEqualTo(SpeedDependence.Kind.AERODYNAMIC);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whatIsTheSameAtAllSpeedsIsMechanical(long seed) {
        SpeedDependence found = dependence(passes(SPEEDS, v -> -1.5 * DEGREE, seed), -1.5 * DEGREE);
        assertThat(found.low()).isLessThan(0.0);
        assertThat(found.high()).isGreaterThan(0.0);
        assertThat(found.kind()).isEqualTo(SpeedDependence.Kind.MECHANICAL);
    }

    /** The slope is told in the direction of the problem: what is worse in fast corners has a positive one, whatever its sign. */
    @Test
    void anOversteerThatGrowsHasAPositiveSlope() {
        SpeedDependence found = dependence(passes(SPEEDS, v -> -1.5 * DEGREE * v * v / MEAN_SQUARE, 3L), -1.5 * DEGREE);
        assertThat(found.slopeRadPerM2S2()).isPositive();
        assertThat(found.kind()).isEqualTo(SpeedDependence.Kind.AERODYNAMIC);
    }

    @Test
    void cornersOfMuchTheSameSpeedDoNotTell() {
        double[] alike = {30.0, 30.5, 31.0, 31.5, 32.0};
        SpeedDependence found = dependence(passes(alike, v -> DEGREE * v * v / meanSquare(alike), 5L), DEGREE);
        assertThat(found.kind()).isEqualTo(SpeedDependence.Kind.OPEN);
        assertThat(found.sentence()).contains("do not tell");
    }

    @Test
    void oneWildCornerDoesNotTurnTheAnswer() {
        List<CornerPass> passes = passes(SPEEDS, v -> 1.5 * DEGREE, 7L);
        passes.replaceAll(pass -> pass.corner() == 8 ? MidCorner.pass(pass.lap(), 8, SPEEDS[7], 6.0 * DEGREE) : pass);
        double right =
                dependence(passes(SPEEDS, v -> 1.5 * DEGREE, 7L), 1.5 * DEGREE).slopeRadPerM2S2();
        double spoilt = dependence(passes, 1.5 * DEGREE).slopeRadPerM2S2();
        double plain = right + 4.5 * DEGREE * (SPEEDS[7] * SPEEDS[7] - MEAN_SQUARE) / squares();
        assertThat(spoilt - right).isLessThan(0.6 * (plain - right));
    }

    private static double squares() {
        double sum = 0.0;
        for (double speed : SPEEDS) {
            sum += (speed * speed - MEAN_SQUARE) * (speed * speed - MEAN_SQUARE);
        }
        return sum;
    }

    @Test
    void twoCornersAreNoLine() {
        List<CornerPass> two = passes(new double[] {20.0, 50.0}, v -> DEGREE, 1L);
        assertThat(SpeedSlope.of(two, SetupStanding.unknown(), Phase.MID, new Estimate(DEGREE, DEGREE)))
                .isEmpty();
        assertThat(SpeedSlope.of(List.of(), SetupStanding.unknown(), Phase.MID, new Estimate(DEGREE, DEGREE)))
                .isEmpty();
    }
}
