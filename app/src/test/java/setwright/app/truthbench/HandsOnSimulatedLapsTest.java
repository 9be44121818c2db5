package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.handling.HandsEvent.Kind;

/**
 * Gestures of the hands on two cases of a tuning seed, an inconsistent driver and a balanced car, against their definition on the true
 * signals. The floors lie one miss in five below the tables of docs/slip.md, so that noise drawn anew passes and a finder that takes
 * ordinary steering for a gesture does not.
 */
final class HandsOnSimulatedLapsTest {
    private static final long TUNING_SEED = 501L;

    private static final HandsTally TALLY = IntStream.of(16, 21)
            .mapToObj(number -> HandsCase.tally(CaseDraw.draw(TUNING_SEED, number, Optional.empty())))
            .reduce(HandsTally.NONE, HandsTally::plus);

    @Test
    void corrections_that_answer_the_rear_are_corrections() {
        HandsScore score = TALLY.score(Kind.CORRECTION, HandsTruth.DEFINED, true);
        assertThat(score.real()).isGreaterThan(10);
        assertThat(score.precision().share()).as(score.toString()).isGreaterThan(0.8);
        assertThat(score.recall().share()).as(score.toString()).isGreaterThan(0.6);
    }

    @Test
    void winding_on_that_answers_the_front_is_winding_on() {
        HandsScore score = TALLY.score(Kind.WIND_ON, HandsTruth.DEFINED, true);
        assertThat(score.real()).isGreaterThan(10);
        assertThat(score.precision().share()).as(score.toString()).isGreaterThan(0.7);
        assertThat(score.recall().share()).as(score.toString()).isGreaterThan(0.6);
    }

    @Test
    void holds_are_seen_as_they_are_defined() {
        HandsScore score = TALLY.score(Kind.HOLD, HandsTruth.DEFINED, false);
        assertThat(score.real()).isGreaterThan(10);
        assertThat(score.precision().share()).as(score.toString()).isGreaterThan(0.5);
        assertThat(score.recall().share()).as(score.toString()).isGreaterThan(0.5);
    }
}
