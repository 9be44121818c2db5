package setwright.app.json;

import static setwright.app.json.Numbers.known;
import static setwright.app.json.Numbers.samples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.predict.PredictionAnswer;
import setwright.app.predict.PresentBalance;
import setwright.app.story.PredictionWords;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.SetupItem;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** Writes predictions as JSON of version 1. Units do not follow the user's choice: they stand in the field names. */
public final class PredictionJsonWriter {
    private static final int VERSION = 1;
    private static final double DEG = Math.toDegrees(1.0);
    private static final double KMH = 3.6;

    private final PredictionAnswer answer;
    private final PredictionWords words;
    private final PresentBalance now;

    private PredictionJsonWriter(PredictionAnswer answer) {
        this.answer = answer;
        this.words = new PredictionWords(answer, Figures.forTerminal(UnitSystem.METRIC));
        this.now = PresentBalance.of(answer);
    }

    /** Returns the JSON text, ending with a line break. */
    public static String write(PredictionAnswer answer) {
        return Numbers.text(new PredictionJsonWriter(answer).document());
    }

    private PredictionJson document() {
        Stint stint = answer.answer().diagnosis().stint();
        return new PredictionJson(
                VERSION,
                new PredictionJson.Recording(
                        stint.recording().name(),
                        stint.goodLaps().stream().map(Lap::number).toList(),
                        answer.answer().diagnosis().repeatability().repeatable()),
                answer.answer().car().description(),
                answer.asked(),
                answer.predictions().stream().map(this::prediction).toList(),
                answer.answer().remarks(),
                Story.CAUTION);
    }

    private PredictionJson.Prediction prediction(Prediction prediction) {
        return new PredictionJson.Prediction(
                prediction.changes().stream()
                        .map(change -> new PredictionJson.Change(
                                change.item(),
                                change.from(),
                                change.to(),
                                answer.answer()
                                        .car()
                                        .item(change.item())
                                        .map(SetupItem::unit)
                                        .orElse("")))
                        .toList(),
                words.headline(prediction).replace(Figures.KEPT_TOGETHER, ' '),
                effect(prediction.lapTimeS()),
                phases(prediction),
                prediction.corners().stream().map(PredictionJsonWriter::corner).toList(),
                answer.asked() ? Optional.of(lap(prediction.lap())) : Optional.empty(),
                prediction.reasons(),
                words.doubts(prediction));
    }

    private List<PredictionJson.PhaseEffect> phases(Prediction prediction) {
        List<PredictionJson.PhaseEffect> phases = new ArrayList<>();
        for (int i = 0; i < prediction.phases().size(); i++) {
            PhaseEffect effect = prediction.phases().get(i);
            OptionalDouble present = now.rad(effect.phase(), effect.speedClass());
            phases.add(new PredictionJson.PhaseEffect(
                    effect.phase().words(),
                    effect.speedClass().map(SpeedClass::words).orElse("all"),
                    degrees(effect.balance()),
                    present.isPresent() ? Numbers.degrees(present.getAsDouble()) : present,
                    i < prediction.selectivity().size()
                            ? known(prediction.selectivity().get(i))
                            : OptionalDouble.empty()));
        }
        return phases;
    }

    private static PredictionJson.CornerEffect corner(CornerEffect corner) {
        return new PredictionJson.CornerEffect(
                corner.corner(),
                corner.speedClass().words(),
                effect(corner.timeS()),
                Arrays.stream(Phase.values())
                        .flatMap(phase -> corner
                                .balance(phase)
                                .map(effect -> new PredictionJson.CornerPhase(phase.words(), degrees(effect)))
                                .stream())
                        .toList());
    }

    private static PredictionJson.Lap lap(LapEffect lap) {
        return new PredictionJson.Lap(
                samples(lap.station(), 1.0),
                samples(lap.balance(), DEG),
                samples(lap.balanceLow(), DEG),
                samples(lap.balanceHigh(), DEG),
                samples(lap.timeS(), 1.0),
                samples(lap.speed(), KMH));
    }

    private static PredictionJson.Effect degrees(Effect effect) {
        return effect(effect.times(DEG));
    }

    private static PredictionJson.Effect effect(Effect effect) {
        return new PredictionJson.Effect(
                known(effect.central()),
                known(effect.low()),
                known(effect.high()),
                known(effect.probabilityPositive()),
                effect.signSure());
    }
}
