package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarPrior;
import setwright.core.handling.Phase;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Drive;

final class PredictorTest {
    private static final CarSheet SHEET = Sheets.adjustable();
    private static final Predictor PREDICTOR = predictor();
    private static final List<Prediction> PREDICTIONS = PREDICTOR.predict(List.of(
            change("front_bar", 0),
            change("front_bar", 1),
            change("front_bar", -1),
            change("rear_bar", 1),
            change("rear_spring", 1),
            change("rear_spring", -1),
            change("rear_wing", 1),
            change("rear_wing", -1),
            change("brake_bias_front", 2)));

    private static Predictor predictor() {
        Diagnosis diagnosis = Diagnostician.diagnose(new Drive(4L).laps(4).stint(), SHEET);
        return Predictor.of(
                diagnosis.stint(), diagnosis.trace(), diagnosis.passes(), SHEET, CarBelief.of(CarPrior.of(SHEET)));
    }

    private static List<SetupChange> change(String item, int steps) {
        var found = SHEET.item(item).orElseThrow();
        return List.of(new SetupChange(item, found.value(), found.value() + steps * found.step()));
    }

    private static Prediction turned(String item, int steps) {
        return PREDICTIONS.stream()
                .filter(prediction -> prediction.changes().equals(change(item, steps)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anUnchangedSetupHasNoEffect() {
        Prediction same = turned("front_bar", 0);
        Effect none = new Effect(0.0, 0.0, 0.0, 0.5);
        assertThat(same.lapTimeS()).isEqualTo(none);
        assertThat(same.phases())
                .isNotEmpty()
                .allSatisfy(phase -> assertThat(phase.balance()).isEqualTo(none));
        assertThat(same.corners())
                .hasSize(8)
                .allSatisfy(corner -> assertThat(corner.timeS()).isEqualTo(none));
        assertThat(same.selectivity()).containsOnly(0.0);
    }

    @Test
    void theSameQuestionHasTheSameAnswerWhateverElseIsAsked() {
        Prediction first = turned("rear_bar", 1);
        Prediction alone = PREDICTOR.predict(List.of(change("rear_bar", 1))).get(0);
        assertThat(alone.phases()).isEqualTo(first.phases());
        assertThat(alone.corners()).isEqualTo(first.corners());
        assertThat(alone.lapTimeS()).isEqualTo(first.lapTimeS());
        assertThat(alone.lap().balance().toArray())
                .isEqualTo(first.lap().balance().toArray());
    }

    @Test
    void oneThatIsReadyAnswersTheSameAgainAndAgain() {
        Predictor ready = PREDICTOR.ready();
        for (String item : List.of("rear_wing", "rear_bar", "rear_wing")) {
            Prediction first = turned(item, 1);
            Prediction again = ready.predict(List.of(change(item, 1))).get(0);
            assertThat(again.phases()).isEqualTo(first.phases());
            assertThat(again.corners()).isEqualTo(first.corners());
            assertThat(again.lapTimeS()).isEqualTo(first.lapTimeS());
        }
    }

    @Test
    void fewerDrawsOfOneThatIsReadySayNearlyTheSame() {
        Effect all = turned("rear_wing", 1).lapTimeS();
        Effect some = PREDICTOR
                .ready()
                .predict(List.of(change("rear_wing", 1)), 50)
                .get(0)
                .lapTimeS();
        // The middle of 50 draws scatters by 1.25 / sqrt(50) of their standard deviation; four times that is chance's
        // end.
        assertThat(some.central()).isEqualTo(all.central(), within(4.0 * 1.25 / Math.sqrt(50.0) * all.deviation()));
    }

    @Test
    void oppositeSmallChangesHaveOppositeEffects() {
        for (String item : List.of("front_bar", "rear_spring", "rear_wing")) {
            double up = mid(turned(item, 1));
            double down = mid(turned(item, -1));
            // what is not linear in one step: less than a fifth of it
            assertThat(down).as(item).isCloseTo(-up, within(0.2 * Math.abs(up)));
            assertThat(up).as(item).isNotZero();
        }
    }

    @Test
    void aStifferBarUnloadsItsOwnAxlesGrip() {
        assertThat(mid(turned("front_bar", 1))).isPositive();
        assertThat(mid(turned("rear_bar", 1))).isNegative();
    }

    @Test
    void brakeBiasIsForTheBrakeAndSelectivitySaysSo() {
        Prediction bias = turned("brake_bias_front", 2);
        double onTheBrake = Math.abs(
                bias.balance(Phase.ENTRY, Optional.empty()).orElseThrow().central());
        double onThrottle = Math.abs(
                bias.balance(Phase.EXIT, Optional.empty()).orElseThrow().central());
        assertThat(onTheBrake).isGreaterThan(5.0 * onThrottle);
        double share = 0.0;
        for (int p = 0; p < bias.phases().size(); p++) {
            PhaseEffect phase = bias.phases().get(p);
            if (phase.speedClass().isPresent() && (phase.phase() == Phase.BRAKING || phase.phase() == Phase.ENTRY)) {
                share += bias.selectivity().get(p);
            }
        }
        assertThat(share).isBetween(0.8, 1.0);
    }

    private static double mid(Prediction prediction) {
        return prediction.balance(Phase.MID, Optional.empty()).orElseThrow().central();
    }

    @Test
    void drawsAreSharedOutOverAllLaps() {
        assertThat(IntStream.range(0, 20).map(k -> Predictor.lap(k, 20, 8)).distinct())
                .hasSize(8);
        assertThat(IntStream.range(0, 20).map(k -> Predictor.lap(k, 20, 60)).boxed())
                .containsExactlyElementsOf(
                        IntStream.range(0, 20).map(k -> 3 * k).boxed().toList());
    }
}
