package setwright.app.report.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.app.evidence.Answer;
import setwright.app.predict.PredictionAnswer;
import setwright.app.predict.PresentBalance;
import setwright.app.report.Page;
import setwright.app.report.change.PredictionView.Candidate;
import setwright.app.report.change.PredictionView.CornerRow;
import setwright.app.report.change.PredictionView.EffectCell;
import setwright.app.report.change.PredictionView.PhaseRow;
import setwright.app.story.PredictionWords;
import setwright.app.units.Figures;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.CornerEffect;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;

/** Writes the page of a predicted change: one HTML document with everything in it. */
public final class PredictionReport {
    private final PredictionAnswer answer;
    private final Figures figures;
    private final PredictionWords words;
    private final PresentBalance now;

    private PredictionReport(PredictionAnswer answer, Figures figures) {
        this.answer = answer;
        this.figures = figures;
        this.words = new PredictionWords(answer, figures);
        this.now = PresentBalance.of(answer);
    }

    /** Returns the document; the answer holds at least one prediction. */
    public static String html(PredictionAnswer answer, Figures figures) {
        PredictionReport report = new PredictionReport(answer, figures);
        return Page.render(
                "predict.jte", answer.asked() ? report.one(answer.predictions().get(0)) : report.all());
    }

    /** Returns what the page of one change shows. */
    static PredictionView view(PredictionAnswer answer, Prediction prediction, Figures figures) {
        return new PredictionReport(answer, figures).one(prediction);
    }

    /** Returns what was read: recording, laps, car. */
    static List<String> facts(Answer answer) {
        Stint stint = answer.diagnosis().stint();
        return List.of(
                stint.recording().name(),
                stint.goodLaps().size() + " laps",
                answer.car().description());
    }

    private PredictionView one(Prediction prediction) {
        EffectCells cells = cells(List.of(prediction), prediction.corners());
        List<Optional<SpeedClass>> classes = Stream.concat(
                        Arrays.stream(SpeedClass.values())
                                .filter(speed -> prediction.phases().stream()
                                        .anyMatch(effect -> effect.speedClass().equals(Optional.of(speed))))
                                .map(Optional::of),
                        Stream.of(Optional.<SpeedClass>empty()))
                .toList();
        return new PredictionView(
                words.change(prediction) + " \u2013 Setwright",
                facts(answer.answer()),
                words.heading(prediction),
                Stream.concat(
                                Stream.of(words.rest(prediction)),
                                prediction.reasons().stream().map(figures::told))
                        .toList(),
                words.doubts(prediction),
                words.selectivity(prediction).orElse(""),
                classes.stream()
                        .map(speed -> speed.map(SpeedClass::words)
                                .map(text -> Figures.capital(text) + "-speed corners")
                                .orElse("All corners"))
                        .toList(),
                phases(prediction, classes, cells),
                corners(prediction, cells),
                new LapEffectPlot(answer.answer().diagnosis().stint().circuit(), figures).panels(prediction.lap()),
                List.of(),
                cells.legend(),
                Page.style());
    }

    private List<PhaseRow> phases(Prediction prediction, List<Optional<SpeedClass>> classes, EffectCells cells) {
        return Arrays.stream(Phase.values())
                .filter(phase -> prediction.phases().stream().anyMatch(effect -> effect.phase() == phase))
                .map(phase -> new PhaseRow(
                        Figures.capital(phase.words()),
                        classes.stream()
                                .map(speed -> cells.balance(
                                        phase.words(), prediction.balance(phase, speed), now(phase, speed)))
                                .toList()))
                .toList();
    }

    private String now(Phase phase, Optional<SpeedClass> speed) {
        OptionalDouble rad = now.rad(phase, speed);
        return rad.isEmpty() ? "" : "now " + figures.signed(Math.toDegrees(rad.getAsDouble()), 2);
    }

    private List<CornerRow> corners(Prediction prediction, EffectCells cells) {
        List<CornerRow> rows = new ArrayList<>();
        for (CornerEffect corner : prediction.corners()) {
            rows.add(new CornerRow(
                    String.valueOf(corner.corner()),
                    place(corner),
                    phases(cells, corner::balance),
                    cells.time("corner " + corner.corner(), corner.timeS())));
        }
        Effect lap = prediction.lapTimeS();
        EffectCell lapTime = cells.time("lap", lap);
        rows.add(new CornerRow(
                "Lap",
                "",
                phases(cells, phase -> prediction.balance(phase, Optional.empty())),
                lapTime.withoutBar())); // on the scale of single corners its bar would run off
        return rows;
    }

    private static List<EffectCell> phases(
            EffectCells cells, java.util.function.Function<Phase, Optional<Effect>> effects) {
        return Arrays.stream(Phase.values())
                .map(phase -> cells.balance(phase.words(), effects.apply(phase), ""))
                .toList();
    }

    private String place(CornerEffect corner) {
        return now.table().rows().stream()
                .filter(row -> row.corner().number() == corner.corner())
                .findFirst()
                .map(row -> row.corner().direction().name().toLowerCase(Locale.ROOT) + ", "
                        + corner.speedClass().words() + ", " + figures.speed(row.lowestSpeedMps()))
                .orElse(corner.speedClass().words());
    }

    private PredictionView all() {
        EffectCells cells = cells(answer.predictions(), List.of());
        return new PredictionView(
                "One step each way \u2013 Setwright",
                facts(answer.answer()),
                words.summary(),
                List.of(words.first()),
                words.driving(),
                "",
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                answer.predictions().stream()
                        .map(prediction -> candidate(prediction, cells))
                        .toList(),
                cells.legend(),
                Page.style());
    }

    private Candidate candidate(Prediction prediction, EffectCells cells) {
        return new Candidate(
                words.change(prediction),
                cells.time("lap", prediction.lapTimeS()),
                figures.sureness(prediction.lapTimeS().probabilityOfSign()),
                phases(cells, phase -> prediction.balance(phase, Optional.empty())));
    }

    /** All drawings of a kind on a page share one scale, so that they can be compared. */
    private EffectCells cells(List<Prediction> predictions, List<CornerEffect> corners) {
        return cells(figures, now.table().yardstickRad(), predictions, corners);
    }

    static EffectCells cells(
            Figures figures, double yardstick, List<Prediction> predictions, List<CornerEffect> corners) {
        double rad = Stream.concat(
                        predictions.stream().flatMap(p -> p.phases().stream()).map(p -> p.balance()),
                        corners.stream().flatMap(corner -> corner.balance().values().stream()))
                .mapToDouble(PredictionReport::reach)
                .filter(Double::isFinite)
                .max()
                .orElse(0.0);
        double seconds = (corners.isEmpty()
                        ? predictions.stream().map(Prediction::lapTimeS)
                        : corners.stream().map(CornerEffect::timeS))
                .mapToDouble(PredictionReport::reach)
                .filter(Double::isFinite)
                .max()
                .orElse(0.0);
        return new EffectCells(figures, yardstick, Math.max(rad, 0.1 * yardstick), Math.max(seconds, 0.005));
    }

    private static double reach(Effect effect) {
        return Math.max(Math.abs(effect.low()), Math.abs(effect.high()));
    }
}
