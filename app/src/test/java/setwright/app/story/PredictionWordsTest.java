package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.example.ExamplePrediction;
import setwright.app.predict.PredictionAnswer;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Repeatability;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

final class PredictionWordsTest {
    private static final Figures FIGURES = Figures.forTerminal(UnitSystem.METRIC);

    private final PredictionWords words = new PredictionWords(ExamplePrediction.one(), FIGURES);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-0.08 | -0.15 | -0.02 | 0.09 | quicker by 0.08 s a lap (0.02 to 0.15 s, 91 % sure)",
                "0.08 | 0.02 | 0.15 | 1.0 | slower by 0.08 s a lap (0.02 to 0.15 s, over 99 % sure)",
                "-0.03 | -0.12 | 0.01 | 0.26 | perhaps quicker by 0.03 s a lap (0.12 s quicker to 0.01 s slower, 74 % sure: the track decides)",
                "-0.008 | -0.012 | -0.003 | 0.03 | quicker by 0.008 s a lap (0.003 to 0.012 s, 97 % sure)",
                "-0.001 | -0.003 | 0.002 | 0.3 | no change of lap time that shows"
            })
    void lapTimeHasItsDirectionRangeAndSureness(double central, double low, double high, double positive, String text) {
        assertThat(words.time(new Effect(central, low, high, positive)).replace(Figures.KEPT_TOGETHER, ' '))
                .isEqualTo(text);
    }

    /** The invented car oversteers on entry of slow corners by far more than half a typical change. */
    @ParameterizedTest
    @CsvSource({
        "0.2, takes oversteer out of entry (low speed)",
        "-0.2, adds to the oversteer in entry (low speed)",
        "0.001, hardly moves the balance"
    })
    void theBalanceNowDecidesTheWord(double deg, String text) {
        assertThat(words.headline(moving(Phase.ENTRY, deg, 0.99))).endsWith("; " + text + ".");
    }

    @Test
    void whereTheBalanceIsEvenTheDirectionIsNamed() {
        assertThat(words.headline(moving(Phase.MID, 0.2, 0.99)))
                .endsWith("moves toward understeer in mid (low speed).");
    }

    @Test
    void anUnsureMoveIsNotClaimed() {
        assertThat(words.headline(moving(Phase.MID, 0.2, 0.8)))
                .endsWith("moves the balance, but which way is not sure: the track decides.");
    }

    @Test
    void drivingThatDoesNotRepeatIsTheFirstDoubt() {
        Answer answer = Example.answer();
        Diagnosis d = answer.diagnosis();
        Repeatability loose = new Repeatability(
                false, 0.6, 0.6, 0.01, 0.002, d.repeatability().corners(), "it scatters");
        PredictionAnswer unsteady = ExamplePrediction.one(new Answer(
                new Diagnosis(d.stint(), d.trace(), d.passes(), loose, List.of(), List.of(), d.verdict(), d.reason()),
                answer.car(),
                List.of(),
                List.of()));
        assertThat(new PredictionWords(unsteady, FIGURES)
                        .doubts(unsteady.predictions().get(0))
                        .get(0))
                .startsWith("The driving does not repeat");
    }

    /** The invented change again, with one more pooled effect in slow corners in place of its own. */
    private static Prediction moving(Phase phase, double deg, double sure) {
        Prediction base = ExamplePrediction.one().predictions().get(0);
        double rad = Math.toRadians(deg);
        List<PhaseEffect> phases = new ArrayList<>();
        phases.add(new PhaseEffect(
                phase, Optional.of(SpeedClass.LOW), new Effect(rad, rad, rad, rad > 0.0 ? sure : 1.0 - sure)));
        phases.add(new PhaseEffect(phase, Optional.of(SpeedClass.HIGH), new Effect(0.0, 0.0, 0.0, 0.5)));
        return new Prediction(
                base.changes(),
                base.corners(),
                phases,
                base.lapTimeS(),
                List.of(1.0, 0.0),
                base.lap(),
                base.reasons(),
                base.doubts());
    }
}
