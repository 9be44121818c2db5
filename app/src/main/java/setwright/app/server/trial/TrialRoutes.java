package setwright.app.server.trial;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.diagnose.Diagnoser;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.OpenTrial;
import setwright.app.logbook.StoryDesk;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.app.logbook.TrialStatus;
import setwright.app.report.Page;
import setwright.app.report.trial.TrialReport;
import setwright.app.server.guard.Headers;
import setwright.app.server.job.JobProgress;
import setwright.app.server.job.Jobs;
import setwright.app.server.trial.TriedView.EffectView;
import setwright.app.server.trial.TriedView.TrialView;
import setwright.app.server.view.Frame;
import setwright.app.trial.TrialAnswer;
import setwright.app.units.Figures;
import setwright.logbook.Logbook;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** Answers what is asked of trials. */
public final class TrialRoutes {
    private static final int KEPT = 3;

    private final Logbook logbook;
    private final LogbookTrials trials;
    private final Jobs jobs;
    private final String token;
    /** The last verdicts with what they rest on. */
    private final Map<Long, TrialAnswer> judged = new LinkedHashMap<>();

    /** Makes them for a logbook. */
    public TrialRoutes(Logbook logbook, LogbookTrials trials, Jobs jobs, String token) {
        this.logbook = logbook;
        this.trials = trials;
        this.jobs = jobs;
        this.token = token;
    }

    /** Which car's trial is meant. */
    record Wish(String car) {}

    /** What came of it. */
    record Told(String message) {}

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.get("/tried", this::tried);
        routes.get("/trials/{number}", this::verdict);
        routes.post("/trials/judge", this::judge);
        routes.post("/trials/drop", context -> {
            String car = context.bodyAsClass(Wish.class).car();
            context.json(new Told(
                    "Trial " + new OpenTrial(logbook, Optional.of(car)).drop().id() + " is given up."));
        });
    }

    private void judge(Context context) {
        String car = context.bodyAsClass(Wish.class).car();
        TrialStatus status = new StoryDesk(logbook)
                .cars().stream()
                        .filter(row -> row.name().equals(car))
                        .findFirst()
                        .map(CarRow::id)
                        .flatMap(id -> TrialStatus.of(logbook, id))
                        .orElseThrow(() -> new LogbookProblem("no trial of " + car + " is under way."));
        long number = status.trial().id();
        context.json(jobs.start(
                "trial " + number,
                "Judging trial " + number,
                status.runs().size() * Diagnoser.STEPS + 1,
                progress -> judge(number, car, progress)));
    }

    private void judge(long number, String car, JobProgress progress) throws Exception {
        TrialAnswer answer = trials.judge(Optional.of(car), progress)
                .orElseThrow(() -> new LogbookProblem(
                        "there is no run with the change yet, or none without. Drive one, then read it in."));
        synchronized (judged) {
            judged.put(number, answer);
            if (judged.size() > KEPT) {
                judged.remove(judged.keySet().iterator().next());
            }
        }
        progress.ready("Trial " + number + ": " + answer.trial().verdict().words() + ".", "/trials/" + number);
    }

    /** Shows a verdict with its picture, as long as the server remembers what it rests on. */
    private void verdict(Context context) {
        String number = context.pathParam("number");
        TrialAnswer answer = number.matches("[0-9]{1,18}")
                ? atHand(Long.parseLong(number))
                        .orElseThrow(() -> new NotFoundResponse("The picture of trial " + number
                                + " is not at hand any more; what was predicted and measured is under Tried."))
                : null;
        if (answer == null) {
            throw new NotFoundResponse("There is no trial of that number.");
        }
        Headers.document(context, TrialReport.html(answer, Frame.figures(context)));
    }

    private Optional<TrialAnswer> atHand(long trial) {
        synchronized (judged) {
            return Optional.ofNullable(judged.get(trial));
        }
    }

    private void tried(Context context) {
        List<Tried> all = new ArrayList<>(new StoryDesk(logbook).tried(Optional.empty()));
        Collections.reverse(all);
        Figures figures = Frame.figures(context);
        context.html(Page.render(
                "live/tried.jte",
                new TriedView(
                        Frame.of(context, token, "Tried", "tried", List.of()),
                        all.stream().map(tried -> view(tried, figures)).toList())));
    }

    private TrialView view(Tried tried, Figures figures) {
        return new TrialView(
                tried.trial().id(),
                tried.car().name(),
                tried.trial().changeWords(),
                atHand(tried.trial().id()).isPresent(),
                tried.verdict()
                        .map(VerdictRow::verdict)
                        .orElse(tried.trial().state().equals(TrialRow.OPEN) ? "under way" : "not judged"),
                tried.verdict().map(VerdictRow::reason).map(Figures::sentence).orElse(""),
                tried.effects().stream().map(effect -> view(effect, figures)).toList());
    }

    private static EffectView view(TriedEffectRow effect, Figures figures) {
        double scale = effect.unit().equals("rad") ? Math.toDegrees(1.0) : 1.0;
        String place = effect.phase().isEmpty()
                ? "lap time, s"
                : effect.phase() + (effect.speed().isEmpty() ? "" : ", " + effect.speed() + " speed") + ", deg";
        return new EffectView(
                place,
                effect.predicted().isEmpty()
                        ? "not told"
                        : words(effect.predicted(), effect.predictedLow(), effect.predictedHigh(), scale, figures),
                words(
                        OptionalDouble.of(effect.measured()),
                        OptionalDouble.of(effect.measuredLow()),
                        OptionalDouble.of(effect.measuredHigh()),
                        scale,
                        figures));
    }

    private static String words(
            OptionalDouble value, OptionalDouble low, OptionalDouble high, double scale, Figures figures) {
        String interval = low.isPresent() && high.isPresent()
                ? " (" + figures.signed(scale * low.getAsDouble(), 2) + " to "
                        + figures.signed(scale * high.getAsDouble(), 2) + ")"
                : "";
        return figures.signed(scale * value.orElse(Double.NaN), 2) + interval;
    }
}
