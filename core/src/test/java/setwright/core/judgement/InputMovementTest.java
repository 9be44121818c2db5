package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.handling.Phase;
import setwright.core.handling.Slide;

final class InputMovementTest {
    private static Slide slide(double station, Slide.Inputs inputs) {
        return new Slide(Slide.Axle.REAR, Phase.ENTRY, station, 10.0, 0.5, 0.01, inputs);
    }

    private static Slide.Inputs inputs(
            double brake,
            double brakeRise,
            double brakeFall,
            double throttleRise,
            double throttleFall,
            double turning) {
        return new Slide.Inputs(brake, brakeRise, brakeFall, 0.0, throttleRise, throttleFall, turning, 0.3);
    }

    @ParameterizedTest
    @CsvSource({
        "0.3, 0.0, 0.5, 0.0, 0.0, 0.00, BRAKE_RELEASE",
        "0.6, 0.8, 0.0, 0.0, 1.0, 0.00, BRAKE_APPLICATION",
        "0.0, 0.0, 0.0, 0.6, 0.0, 0.00, THROTTLE_PICK_UP",
        "0.0, 0.0, 0.0, 0.0, 0.7, 0.00, THROTTLE_LIFT",
        "0.0, 0.0, 0.0, 0.0, 0.0, 0.20, TURN_IN",
        "0.0, 0.0, 0.0, 0.0, 0.0, 0.00, NONE"
    })
    void theInputThatMovedIsTheMostProbable(
            double brake, double rise, double fall, double pick, double lift, double turning, Trigger expected) {
        Map<Trigger, Double> probabilities =
                InputMovement.shares(List.of(List.of(slide(50.0, inputs(brake, rise, fall, pick, lift, turning)))));

        double roundOff = 1.0e-12;
        assertThat(TriggerWords.mostProbable(probabilities)).isEqualTo(expected);
        assertThat(probabilities.values().stream().mapToDouble(p -> p).sum()).isCloseTo(1.0, within(roundOff));
    }

    @Test
    void aBumpLiesStillAndNoInputMoves() {
        List<Slide> same = new ArrayList<>();
        List<Slide> elsewhere = new ArrayList<>();
        for (int lap = 0; lap < 6; lap++) {
            same.add(slide(50.0 + 0.3 * lap, inputs(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)));
            elsewhere.add(slide(50.0 + 9.0 * lap, inputs(0.0, 0.0, 0.0, 0.0, 0.0, 0.0)));
        }

        assertThat(TriggerWords.mostProbable(InputMovement.shares(List.of(same))))
                .isEqualTo(Trigger.BUMP);
        assertThat(TriggerWords.mostProbable(InputMovement.shares(List.of(elsewhere))))
                .isEqualTo(Trigger.NONE);
    }

    @Test
    void aBrakeReleasedAtTheSamePlaceIsNoBump() {
        List<Slide> released = new ArrayList<>();
        for (int lap = 0; lap < 6; lap++) {
            released.add(slide(50.0, inputs(0.3, 0.0, 0.5, 0.0, 0.0, 0.0)));
        }

        assertThat(TriggerWords.mostProbable(InputMovement.shares(List.of(released))))
                .isEqualTo(Trigger.BRAKE_RELEASE);
    }
}
