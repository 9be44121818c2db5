package setwright.app.report.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import setwright.app.plot.Markup;
import setwright.app.report.IntervalBar;
import setwright.app.report.Page;
import setwright.app.report.RunPlot;
import setwright.app.report.trial.TrialView.EffectRow;
import setwright.app.report.trial.TrialView.Plot;
import setwright.app.story.TrialWords;
import setwright.app.trial.TrialAnswer;
import setwright.app.units.Figures;
import setwright.core.replay.Effect;
import setwright.core.replay.Prediction;
import setwright.core.trial.Trial;
import setwright.core.trial.Trial.Besides;
import setwright.core.trial.Trial.Sector;
import setwright.core.trial.TrialEffect;
import setwright.core.trial.TrialLap;
import setwright.core.trial.TrialRun;

/** Writes the page of a trial. */
public final class TrialReport {
    private static final double DEGREES = Math.toDegrees(1.0);
    private static final String RINGS =
            "Rings: laps without the change; diamonds: with it; bars: the means of the runs. ";
    private static final String DAY = "Dashed: what the day did, from the first setup's runs.";

    private TrialReport() {}

    /** Returns the document. */
    public static String html(TrialAnswer answer, Figures figures) {
        Trial trial = answer.trial();
        TrialWords words = new TrialWords(trial, figures);
        return Page.render(
                "trial.jte",
                new TrialView(
                        "Back to back \u2013 Setwright",
                        List.of(TrialWords.change(answer), words.runs()),
                        words.headline() + ".",
                        trial.reason(),
                        words.more(),
                        Stream.concat(trial.doubts().stream(), answer.aside().stream())
                                .toList(),
                        plots(trial, figures),
                        Stream.concat(words.lap().stream(), words.target().stream())
                                .toList(),
                        effects(answer, figures),
                        Page.style()));
    }

    private static List<Plot> plots(Trial trial, Figures figures) {
        List<Plot> plots = new ArrayList<>();
        plots.add(new Plot("Lap time, s", RINGS + day(trial), drawn(trial, lap -> Optional.of(lap.timeS()), figures)));
        trial.target()
                .ifPresent(target -> plots.add(new Plot(
                        "Balance where it was to be cured, deg",
                        "Against the mean of the same corners over all runs; + toward understeer. " + RINGS
                                + day(trial),
                        drawn(
                                trial,
                                lap -> lap.targetRad().isPresent()
                                        ? Optional.of(DEGREES * lap.targetRad().getAsDouble())
                                        : Optional.empty(),
                                figures))));
        return plots;
    }

    private static String day(Trial trial) {
        return trial.dayS().isPresent() ? DAY : "";
    }

    private static Markup drawn(Trial trial, Function<TrialLap, Optional<Double>> value, Figures figures) {
        return RunPlot.draw(
                trial.runs().stream()
                        .map(run -> series(run, value))
                        .filter(series -> !series.values().isEmpty())
                        .toList(),
                true,
                figures);
    }

    private static RunPlot.Series series(TrialRun run, Function<TrialLap, Optional<Double>> value) {
        return new RunPlot.Series(
                run.name(),
                run.changed(),
                run.laps().stream().flatMap(lap -> value.apply(lap).stream()).toList());
    }

    private static List<EffectRow> effects(TrialAnswer answer, Figures figures) {
        double span = answer.trial().besides().stream()
                .map(Besides::balanceRad)
                .flatMap(effect -> Stream.of(Math.abs(effect.low()), Math.abs(effect.high())))
                .filter(Double::isFinite)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1.0);
        List<EffectRow> rows = new ArrayList<>();
        TrialEffect time = answer.trial().lapTimeS();
        rows.add(row("lap time, s", answer.predicted().map(Prediction::lapTimeS), time, 0.0, "", figures));
        for (Sector found : answer.trial().sectors()) {
            rows.add(row(
                    TrialWords.sector(answer, found) + ", s",
                    Optional.empty(),
                    found.timeS(),
                    0.0,
                    TrialWords.chance(found.clear()),
                    figures));
        }
        for (Besides found : answer.trial().besides()) {
            rows.add(row(
                    TrialWords.place(found.pool()),
                    answer.predicted()
                            .flatMap(prediction -> prediction.balance(
                                    found.pool().phase(), found.pool().speedClass()))
                            .map(effect -> effect.times(DEGREES)),
                    found.balanceRad().times(DEGREES),
                    DEGREES * span,
                    TrialWords.chance(found.clear()),
                    figures));
        }
        return rows;
    }

    private static EffectRow row(
            String place,
            Optional<Effect> predicted,
            TrialEffect measured,
            double span,
            String clear,
            Figures figures) {
        boolean known = Double.isFinite(measured.low()) && Double.isFinite(measured.high());
        return new EffectRow(
                Figures.capital(place),
                predicted.map(effect -> figures.signed(effect.central(), 2)).orElse("\u2013"),
                predicted
                        .map(effect -> range(effect.low(), effect.high(), figures))
                        .orElse(""),
                figures.signed(measured.value(), 2),
                known ? range(measured.low(), measured.high(), figures) : "",
                known && span > 0.0
                        ? IntervalBar.of(measured.low(), measured.high(), measured.value(), span)
                        : new Markup(""),
                clear);
    }

    private static String range(double low, double high, Figures figures) {
        return figures.signed(low, 2) + " to " + figures.signed(high, 2);
    }
}
