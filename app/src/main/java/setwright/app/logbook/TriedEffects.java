package setwright.app.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.trial.TrialAnswer;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;
import setwright.core.trial.Trial.Besides;
import setwright.core.trial.TrialEffect;
import setwright.logbook.row.TriedEffectRow;

/** What a change was to do beside what it did, as rows. */
final class TriedEffects {
    private TriedEffects() {}

    /** Returns the lap time, and the balance of each phase and class of corners that was measured. */
    static List<TriedEffectRow> of(long verdict, TrialAnswer answer) {
        List<TriedEffectRow> rows = new ArrayList<>();
        row(
                        verdict,
                        "",
                        "",
                        "s",
                        answer.predicted().map(Prediction::lapTimeS),
                        answer.trial().lapTimeS())
                .ifPresent(rows::add);
        for (Besides found : answer.trial().besides()) {
            row(
                            verdict,
                            found.pool().phase().words(),
                            found.pool().speedClass().map(SpeedClass::words).orElse(""),
                            "rad",
                            answer.predicted()
                                    .flatMap(prediction -> prediction.balance(
                                            found.pool().phase(), found.pool().speedClass())),
                            found.balanceRad())
                    .ifPresent(rows::add);
        }
        return rows;
    }

    private static Optional<TriedEffectRow> row(
            long verdict, String phase, String speed, String unit, Optional<Effect> predicted, TrialEffect measured) {
        if (!Double.isFinite(measured.value()) || !Double.isFinite(measured.error())) {
            return Optional.empty();
        }
        return Optional.of(new TriedEffectRow(
                verdict,
                phase,
                speed,
                unit,
                known(predicted.map(Effect::central)),
                known(predicted.map(Effect::low)),
                known(predicted.map(Effect::high)),
                measured.value(),
                measured.low(),
                measured.high(),
                measured.error()));
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.filter(Double::isFinite).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
