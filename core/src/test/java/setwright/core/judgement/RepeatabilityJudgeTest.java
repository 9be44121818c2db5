package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.judgement.Repeatability.AtCorner;

/** Invented passes whose balance scatters by what is said, beside laps of an invented drive. */
final class RepeatabilityJudgeTest {
    private static final int LAPS = 8;
    private static final double STEADY_RAD = Math.toRadians(0.05);
    private static final Stint STINT = new Drive(3L).laps(LAPS).stint();

    @Test
    void one_wild_corner_of_four_is_named_and_the_rest_may_judge_the_car() {
        List<CornerPass> passes = passes(LAPS, STEADY_RAD, STEADY_RAD, 20.0 * STEADY_RAD, STEADY_RAD);

        Repeatability judged = RepeatabilityJudge.judge(STINT, passes);

        assertThat(judged.repeatable()).isTrue();
        assertThat(judged.corners()).extracting(AtCorner::repeatable).containsExactly(true, true, false, true);
        assertThat(judged.corners().get(2).why()).startsWith("its balance scatters");
        assertThat(judged.why()).startsWith("Repeatable in 3 of 4 corners.");
    }

    @Test
    void where_most_corners_are_wild_the_car_cannot_be_judged() {
        double wild = 20.0 * STEADY_RAD;

        Repeatability judged = RepeatabilityJudge.judge(STINT, passes(LAPS, wild, wild, wild, STEADY_RAD));

        assertThat(judged.repeatable()).isFalse();
        assertThat(judged.why()).endsWith("so these laps cannot judge the car.");
    }

    @Test
    void what_can_be_told_grows_with_the_scatter() {
        double once = smallest(passes(LAPS, STEADY_RAD, STEADY_RAD));
        double twice = smallest(passes(LAPS, 2.0 * STEADY_RAD, 2.0 * STEADY_RAD));
        assertThat(twice / once).isCloseTo(2.0, within(1.0e-9));
    }

    /** A power table asks for 17 in each group to see one standard deviation, and for 64 to see half of one (Cohen, 1988, ch. 2, values from memory). */
    @Test
    void as_many_laps_as_a_published_table_asks_for_show_a_change_of_that_size() {
        for (int[] asked : new int[][] {{17, 100}, {64, 50}}) {
            List<CornerPass> passes = passes(asked[0], STEADY_RAD, STEADY_RAD, STEADY_RAD, STEADY_RAD, STEADY_RAD);
            // the scatter of so few laps is itself off by up to a third
            assertThat(smallest(passes) / STEADY_RAD).isCloseTo(0.01 * asked[1], within(0.2 * 0.01 * asked[1]));
        }
    }

    @Test
    void two_passes_tell_nothing() {
        Repeatability judged = RepeatabilityJudge.judge(STINT, passes(2, STEADY_RAD));
        assertThat(judged.repeatable()).isFalse();
        assertThat(judged.corners().get(0).why()).isEqualTo("it was driven only twice");
    }

    private static double smallest(List<CornerPass> passes) {
        return RepeatabilityJudge.judge(STINT, passes).smallestBalanceRad();
    }

    /** The same chances each time, so that only their size differs. */
    private static List<CornerPass> passes(int laps, double... scatterRad) {
        Random random = new Random(11L);
        List<CornerPass> passes = new ArrayList<>();
        for (int corner = 0; corner < scatterRad.length; corner++) {
            for (int lap = 0; lap < laps; lap++) {
                passes.add(MidCorner.pass(lap + 1, corner + 1, 30.0, scatterRad[corner] * random.nextGaussian()));
            }
        }
        return passes;
    }
}
