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
import setwright.app.server.job.Job;
import setwright.app.server.job.JobProgress;
import setwright.app.server.job.Jobs;
import setwright.app.server.trial.TriedView.EffectView;
import setwright.app.server.trial.TriedView.TrialView;
import setwright.app.server.view.Frame;
import setwright.app.server.view.PathNumber;
import setwright.app.server.view.Told;
import setwright.app.server.view.Waiting;
import setwright.app.story.TriedWords;
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
        keep(number, answer);
        progress.ready("Trial " + number + ": " + answer.trial().verdict().words() + ".", "/trials/" + number);
    }

    /** Shows a verdict with every lap; reads its runs once more when they are not at hand. */
    private void verdict(Context context) {
        long number = PathNumber.of(context, "number", "trial");
        Optional<TrialAnswer> answer = atHand(number);
        if (answer.isPresent()) {
            Headers.document(context, TrialReport.html(answer.get(), Frame.figures(context)));
            return;
        }
        Tried tried = new StoryDesk(logbook)
                .tried(Optional.empty()).stream()
                        .filter(one -> one.trial().id() == number)
                        .findFirst()
                        .orElseThrow(() -> new NotFoundResponse("There is no trial of that number."));
        VerdictRow verdict =
                tried.verdict().orElseThrow(() -> new NotFoundResponse("Trial " + number + " was not judged yet."));
        String link = "/trials/" + number;
        int runs = verdict.runs().split(",").length;
        Job job = jobs.start(
                "review of trial " + number, "Reading trial " + number, runs * Diagnoser.STEPS + 1, progress -> {
                    keep(number, trials.review(number, progress));
                    progress.ready("Trial " + number + " is read.", link);
                });
        context.html(Page.render(
                "live/waiting.jte",
                new Waiting(
                        Frame.of(context, token, "Trial " + number, "tried", List.of()),
                        "Trial " + number + " is being read.",
                        "Each of its runs is read as it was when it was judged. This takes some seconds a run.",
                        List.of(
                                tried.trial().changeWords() + ": " + verdict.verdict() + ".",
                                Figures.sentence(verdict.reason())),
                        job.id(),
                        link)));
    }

    private void keep(long number, TrialAnswer answer) {
        synchronized (judged) {
            judged.put(number, answer);
            if (judged.size() > KEPT) {
                judged.remove(judged.keySet().iterator().next());
            }
        }
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

    private static TrialView view(Tried tried, Figures figures) {
        return new TrialView(
                tried.trial().id(),
                tried.car().name(),
                tried.trial().changeWords(),
                tried.verdict().isPresent(),
                tried.verdict()
                        .map(VerdictRow::verdict)
                        .orElse(tried.trial().state().equals(TrialRow.OPEN) ? "under way" : "not judged"),
                tried.verdict().map(VerdictRow::reason).map(Figures::sentence).orElse(""),
                tried.effects().stream().map(effect -> view(effect, figures)).toList());
    }

    private static EffectView view(TriedEffectRow effect, Figures figures) {
        double scale = TriedWords.scale(effect);
        return new EffectView(
                TriedWords.place(effect),
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
