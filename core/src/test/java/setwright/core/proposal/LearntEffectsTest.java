package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.SetupChange;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

final class LearntEffectsTest {
    private static final SetupChange ONE_STEP = new SetupChange("front_bar", 5.0, 4.0);
    private static final SetupChange TWO_STEPS = new SetupChange("front_bar", 5.0, 3.0);
    private static final Effect TOWARD_OVERSTEER = new Effect(-0.010, -0.015, -0.005, 0.01);
    private static final Effect NOTHING = new Effect(0.0, 0.0, 0.0, 0.0);

    private static Prediction prediction(SetupChange change, Effect mid, Effect time) {
        Channel none = Channel.of(new double[] {0.0});
        return new Prediction(
                List.of(change),
                List.of(),
                List.of(new PhaseEffect(Phase.MID, Optional.empty(), mid)),
                time,
                List.of(1.0),
                new LapEffect(none, none, none, none, none, none),
                List.of("because"),
                List.of());
    }

    private static MeasuredEffect mid(SetupChange change, double rad, double error) {
        return new MeasuredEffect(change, Optional.of(Pool.all(Phase.MID)), rad, error);
    }

    private static Effect updated(Prediction prediction, MeasuredEffect... measured) {
        return LearntEffects.of(List.of(measured))
                .update(prediction)
                .balance(Phase.MID, Optional.empty())
                .orElseThrow();
    }

    @Test
    void nothingTriedChangesNothing() {
        Prediction prediction = prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING);
        assertThat(LearntEffects.none().update(prediction)).isSameAs(prediction);
        MeasuredEffect other = mid(new SetupChange("rear_bar", 1.0, 2.0), 0.1, 0.01);
        assertThat(LearntEffects.of(List.of(other)).update(prediction)).isSameAs(prediction);
    }

    @Test
    void aMeasuredEffectDrawsThePredictionTowardItAndMakesItSurer() {
        Effect after = updated(prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING), mid(ONE_STEP, -0.020, 0.002));
        assertThat(after.central()).isBetween(-0.020, -0.010);
        assertThat(after.high() - after.low()).isLessThan(TOWARD_OVERSTEER.high() - TOWARD_OVERSTEER.low());
        Effect twice = updated(
                prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING),
                mid(ONE_STEP, -0.020, 0.002),
                mid(ONE_STEP, -0.020, 0.002));
        assertThat(twice.central()).isLessThan(after.central());
    }

    @Test
    void itIsBroughtToTheSizeAndDirectionAskedFor() {
        Effect wide = new Effect(-0.020, -0.120, 0.080, 0.4);
        assertThat(updated(prediction(TWO_STEPS, wide, NOTHING), mid(ONE_STEP, -0.010, 0.0001))
                        .central())
                .isCloseTo(-0.020, within(0.001));
        SetupChange back = new SetupChange("front_bar", 4.0, 5.0);
        Effect open = new Effect(0.0, -0.1, 0.1, 0.5);
        assertThat(updated(prediction(back, open, NOTHING), mid(ONE_STEP, -0.010, 0.0001))
                        .central())
                .isCloseTo(0.010, within(0.001));
    }

    @Test
    void anUnsureMeasurementHardlyCounts() {
        Effect after = updated(prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING), mid(ONE_STEP, 0.050, 1.0));
        assertThat(after.central()).isCloseTo(-0.010, within(1.0e-4));
    }

    @Test
    void whatTheReplayHoldsForNothingIsLearntFromTheTrackAlone() {
        Prediction after = LearntEffects.of(List.of(new MeasuredEffect(ONE_STEP, Optional.empty(), -0.2, 0.05)))
                .update(prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING));
        assertThat(after.lapTimeS().central()).isCloseTo(-0.2, within(1.0e-9));
        assertThat(after.lapTimeS().probabilityPositive()).isLessThan(0.01);
        assertThat(after.reasons()).hasSize(2).last().asString().contains("front_bar", "lap time -0.20 s", "+0.00");
        assertThat(after.balance(Phase.MID, Optional.empty())).contains(TOWARD_OVERSTEER);
    }

    @Test
    void whatAMeasuredLapTimePromisesBeyondTheReplayIsTold() {
        LearntEffects learnt = LearntEffects.of(List.of(new MeasuredEffect(ONE_STEP, Optional.empty(), -0.2, 0.05)));
        assertThat(learnt.quickerS(prediction(ONE_STEP, TOWARD_OVERSTEER, NOTHING), answered -> answered))
                .isCloseTo(0.2, within(1.0e-9));
        assertThat(learnt.quickerS(
                        prediction(new SetupChange("rear_bar", 1.0, 2.0), TOWARD_OVERSTEER, NOTHING),
                        answered -> answered))
                .isZero();
    }

    @Test
    void anEffectWithoutErrorIsRefused() {
        assertThatThrownBy(() -> mid(ONE_STEP, 0.1, 0.0)).hasMessageContaining("error above 0");
        assertThatThrownBy(() -> mid(new SetupChange("front_bar", 4.0, 4.0), 0.1, 0.1))
                .hasMessageContaining("nothing was changed");
    }
}
