package setwright.app.predict.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.evidence.Answer;
import setwright.app.predict.ChangeWords;
import setwright.app.scoreboard.PracticeAnswer;
import setwright.core.car.SetupChange;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.replay.Effect;
import setwright.core.replay.HandbookSigns;
import setwright.core.replay.Prediction;
import setwright.core.replay.Predictor;

/**
 * Replays of whole laps, every item turned each way, against the signs on which handbooks agree (named beside {@link HandbookSigns}, from
 * memory). What a proposal gives as its reason rests on these predictions.
 */
final class PredictionsAgainstHandbooksTest {
    private static final int DRAWS = 60;
    /** Effects that cannot be seen in any lap, deg. */
    private static final double NOTHING_DEG = 0.005;

    @ParameterizedTest
    @ValueSource(strings = {"practice-01", "practice-04", "practice-07"})
    void theSignIsTheHandbooksOrTheDisagreementIsSaid(String name) throws IOException {
        int agree = 0;
        List<String> against = new ArrayList<>();
        Answer answer = PracticeAnswer.of(name);
        for (Prediction prediction : predictions(answer)) {
            SetupChange change = prediction.changes().get(0);
            for (HandbookSigns.Sign sign : SetupCatalogue.find(change.item())
                    .map(kind -> HandbookSigns.up(answer.car(), kind))
                    .orElse(List.of())) {
                Optional<Effect> effect = prediction
                        .balance(sign.phase(), Optional.empty())
                        .filter(Effect::signSure)
                        .filter(found -> Math.abs(Math.toDegrees(found.central())) >= NOTHING_DEG);
                if (effect.isPresent()) {
                    boolean up = change.to() > change.from();
                    if (effect.get().central() > 0.0 == (sign.understeer() == up)) {
                        agree++;
                    } else {
                        assertThat(prediction.doubts())
                                .as("what the user hears of it")
                                .anySatisfy(doubt -> assertThat(doubt)
                                        .contains(
                                                "Handbooks say",
                                                change.item(),
                                                sign.phase().place()));
                        against.add(String.format(
                                java.util.Locale.ROOT,
                                "%s %s to %s, %s: %+.3f deg",
                                change.item(),
                                change.from(),
                                change.to(),
                                sign.phase(),
                                Math.toDegrees(effect.get().central())));
                    }
                }
            }
        }
        assertThat(agree).as("signs that agree, against %s", against).isGreaterThan(Math.max(20, 9 * against.size()));
    }

    private static List<Prediction> predictions(Answer answer) {
        Diagnosis diagnosis = answer.diagnosis();
        return Predictor.of(
                        diagnosis.stint(),
                        diagnosis.trace(),
                        diagnosis.passes(),
                        answer.car(),
                        Identifier.believe(
                                List.of(new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes())),
                                answer.car()))
                .predict(new ChangeWords(answer.car()).stepsEach(2), DRAWS);
    }
}
