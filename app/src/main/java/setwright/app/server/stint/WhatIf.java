package setwright.app.server.stint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.app.predict.ChangeWords;
import setwright.app.predict.PredictionAnswer;
import setwright.app.story.PredictionWords;
import setwright.app.units.Figures;
import setwright.core.car.SetupChange;
import setwright.core.handling.Phase;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/**
 * What another setup would have done on the laps of a stint.
 *
 * @param headline  the change and what it does to the lap, in words
 * @param lap       change of the lap time, s
 * @param corners   in driving order
 * @param reasons   why, in sentences
 * @param doubts    what it rests on, in sentences
 */
record WhatIf(String headline, EffectJson lap, List<CornerJson> corners, List<String> reasons, List<String> doubts) {

    /**
     * A predicted change of a figure.
     *
     * @param low   a tenth lies below
     * @param high  a tenth lies above
     * @param sure  whether nine tenths agree on the sign
     */
    record EffectJson(double central, double low, double high, boolean sure) {
        static EffectJson of(Effect effect) {
            return new EffectJson(effect.central(), effect.low(), effect.high(), effect.signSure());
        }
    }

    /**
     * A corner.
     *
     * @param number   of the corner
     * @param time     change of its time, s
     * @param balance  change of the balance by phase, deg; positive: toward understeer
     */
    record CornerJson(int number, EffectJson time, Map<String, EffectJson> balance) {
        static CornerJson of(CornerEffect corner) {
            Map<String, EffectJson> balance = new LinkedHashMap<>();
            for (Phase phase : Phase.values()) {
                corner.balance(phase)
                        .ifPresent(
                                effect -> balance.put(phase.words(), EffectJson.of(effect.times(Math.toDegrees(1.0)))));
            }
            return new CornerJson(corner.corner(), EffectJson.of(corner.timeS()), balance);
        }
    }

    private static final int ROUGH_DRAWS = 40;

    /**
     * Replays the laps with a change.
     *
     * @param words  what to turn, each such as {@code front_bar=3}; turned together
     * @param rough  from a fifth of the draws, at once, while an item is still being moved
     * @return empty when these laps do not allow it
     */
    static Optional<WhatIf> of(OpenStint stint, List<String> words, boolean rough, Figures figures) {
        List<SetupChange> changes = new ChangeWords(stint.answer().car()).read(words);
        return stint.foresight()
                .flatMap(foresight -> (rough
                                ? foresight.foresee(List.of(changes), ROUGH_DRAWS)
                                : foresight.foresee(List.of(changes)))
                        .stream().findFirst())
                .map(stint.laps().learnt()::update)
                .map(prediction ->
                        of(prediction, new PredictionAnswer(stint.answer(), true, List.of(prediction)), figures));
    }

    private static WhatIf of(Prediction prediction, PredictionAnswer answer, Figures figures) {
        PredictionWords words = new PredictionWords(answer, figures);
        return new WhatIf(
                words.heading(prediction),
                EffectJson.of(prediction.lapTimeS()),
                prediction.corners().stream().map(CornerJson::of).toList(),
                prediction.reasons().stream().map(figures::told).toList(),
                words.doubts(prediction));
    }
}
