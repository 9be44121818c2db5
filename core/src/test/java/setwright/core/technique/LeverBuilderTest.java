package setwright.core.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.technique.Question.Here;
import setwright.core.technique.TechniqueLever.Response;

/** Invented drivers whose overlap of brake and steering does a known thing to the balance. */
final class LeverBuilderTest {
    private static final int CORNERS = 6;
    private static final int LAPS = 10;
    private static final double PER_METRE_RAD = Math.toRadians(0.15);
    private static final double NAMED = 0.05;

    /** Each further metre adds to the oversteer; the overlap is read with the error that loggers leave. */
    private static Question driver(long seed, double spreadM, double radPerMetre, Direction direction) {
        Random random = new Random(seed);
        List<Here> corners = new ArrayList<>();
        List<CornerSlope> slopes = new ArrayList<>();
        for (int corner = 1; corner <= CORNERS; corner++) {
            double[] laps =
                    IntStream.rangeClosed(2, LAPS + 1).mapToDouble(lap -> lap).toArray();
            double[] read = new double[LAPS];
            double[] size = new double[LAPS];
            for (int i = 0; i < LAPS; i++) {
                double overlap = 20.0 + corner + spreadM * random.nextGaussian();
                read[i] = overlap + Lever.OVERLAP.resolution() * random.nextGaussian();
                size[i] = Math.toRadians(0.8)
                        + radPerMetre * (overlap - 20.0 - corner)
                        + Math.toRadians(0.1) * random.nextGaussian();
            }
            corners.add(new Here(corner, laps, read, size));
            CornerSlope.of(corner, laps, read, size).ifPresent(slopes::add);
        }
        return new Question(
                1,
                Optional.empty(),
                Optional.empty(),
                Lever.OVERLAP,
                direction,
                Response.BALANCE,
                Optional.empty(),
                corners,
                Optional.of(PooledSlope.of(slopes)));
    }

    private static TechniqueLever lever(Question question) {
        return LeverBuilder.build(question, question.pValue(), NAMED).orElseThrow();
    }

    @Test
    void aLeverThatActsIsProvedWithinWhatTheDriverDoes() {
        Question question = driver(1, 2.0, PER_METRE_RAD, Direction.LESS);
        TechniqueLever lever = lever(question);
        assertThat(lever.weak()).isFalse();
        assertThat(lever.strength()).isGreaterThan(0.8);
        assertThat(lever.move()).isNegative();
        assertThat(lever.corners())
                .allSatisfy(at -> assertThat(at.better()).isLessThan(at.usual()))
                .anySatisfy(at -> assertThat(at.better() - at.usual()).isLessThanOrEqualTo(lever.move()));
        assertThat(lever.effect().orElseThrow().high()).isNegative();
        assertThat(lever.laps()).isNotEmpty().doesNotContainAnyElementsOf(lever.against());
    }

    /** Reading errors flatten a slope by a ninth here and by far more where the driver varies less: the mean effect is not to show it. */
    @Test
    void readingErrorsAreGivenBack() {
        for (double spread : new double[] {0.8, 1.5}) {
            double sum = 0.0;
            int count = 0;
            for (int seed = 0; seed < 200; seed++) {
                TechniqueLever lever = lever(driver(seed, spread, PER_METRE_RAD, Direction.LESS));
                if (lever.effect().isPresent()) {
                    sum += lever.effect().get().change() / lever.move();
                    count++;
                }
            }
            assertThat(count).isGreaterThan(150);
            double fourStandardErrors = 0.08;
            assertThat(sum / count / PER_METRE_RAD).isCloseTo(1.0, within(fourStandardErrors));
        }
    }

    @Test
    void aDriverWhoHardlyVariesProvesNothing() {
        TechniqueLever lever = lever(driver(3, 0.2, PER_METRE_RAD, Direction.LESS));
        assertThat(lever.varies()).isFalse();
        assertThat(lever.weak()).isTrue();
        assertThat(lever.effect()).isEmpty();
    }

    @Test
    void whatPhysicsForbidsIsNeverProved() {
        for (int seed = 0; seed < 50; seed++) {
            TechniqueLever lever = lever(driver(seed, 2.0, -PER_METRE_RAD, Direction.LESS));
            assertThat(lever.weak()).isTrue();
            assertThat(lever.strength()).isZero();
        }
    }

    /** With no effect at all, one in twenty is named by chance. */
    @Test
    void chanceIsNamedNoMoreOftenThanAllowed() {
        int named = 0;
        int runs = 600;
        for (int seed = 0; seed < runs; seed++) {
            named += driver(1_000 + seed, 2.0, 0.0, Direction.LESS).pValue() <= NAMED ? 1 : 0;
        }
        double fourDeviations = 4.0 * Math.sqrt(NAMED * (1.0 - NAMED) * runs);
        assertThat((double) named).isLessThan(NAMED * runs + fourDeviations);
    }
}
