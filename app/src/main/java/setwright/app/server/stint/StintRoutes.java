package setwright.app.server.stint;

import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import setwright.app.logbook.Amending;
import setwright.app.logbook.Amending.Amendment;
import setwright.app.logbook.KeptStint;
import setwright.app.logbook.LogbookTrials;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.logbook.StoryDesk;
import setwright.app.logbook.TrialStatus;
import setwright.app.predict.WrongChange;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.Page;
import setwright.app.report.brief.BriefReport;
import setwright.app.report.brief.BriefRequest;
import setwright.app.server.guard.Headers;
import setwright.app.server.job.Job;
import setwright.app.server.view.Frame;
import setwright.app.server.view.PathNumber;
import setwright.app.server.view.Told;
import setwright.app.server.view.Waiting;
import setwright.app.trial.PlanAnswer;
import setwright.logbook.Logbook;
import setwright.logbook.problem.LogbookProblem;

/** Answers what is asked of a stint. */
public final class StintRoutes {
    private final Logbook logbook;
    private final StintShelf shelf;
    private final LogbookTrials trials;
    private final String token;

    /** Makes them for a logbook. */
    public StintRoutes(Logbook logbook, StintShelf shelf, LogbookTrials trials, String token) {
        this.logbook = logbook;
        this.shelf = shelf;
        this.trials = trials;
        this.token = token;
    }

    /** What the page asks to be tried. */
    record TrialWish(List<String> changes, String together) {}

    /** What somebody says of the car's order. */
    record Order(boolean good) {}

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.get("/stints/{number}", this::page);
        routes.get(
                "/stints/{number}/change",
                context -> context.html(Page.render("live/change.jte", change(ready(context), context))));
        routes.get(
                "/stints/{number}/about",
                context -> context.json(ready(context).columns().about()));
        routes.get(
                "/stints/{number}/samples",
                context -> context.contentType(ContentType.APPLICATION_OCTET_STREAM)
                        .result(ready(context).columns().samples()));
        routes.get("/stints/{number}/what-if", this::whatIf);
        routes.post("/stints/{number}/propose", context -> context.json(shelf.propose(ready(context))));
        routes.post("/stints/{number}/trial", this::openTrial);
        routes.post("/stints/{number}/order", this::order);
        routes.get("/stints/{number}/brief", this::brief);
    }

    private void page(Context context) {
        KeptLaps laps = kept(context);
        Optional<OpenStint> ready = shelf.ready(laps);
        if (ready.isEmpty()) {
            Job job = shelf.open(laps);
            context.html(Page.render(
                    "live/waiting.jte",
                    new Waiting(
                            Frame.of(context, token, name(laps.stint()), "stints", facts(laps.stint())),
                            name(laps.stint()) + " is being read.",
                            "Its laps are cut, each corner is looked at, the car is fitted to them. This takes some seconds.",
                            story(laps.stint().number()),
                            job.id(),
                            "/stints/" + laps.stint().number())));
            return;
        }
        OpenStint stint = ready.get();
        long job = job(stint);
        KeptStint kept = laps.stint();
        context.html(Page.render(
                "live/stint.jte",
                new LiveStint(
                        Frame.of(context, token, name(kept), "stints", facts(kept)),
                        kept.number(),
                        stint.report(Frame.figures(context)),
                        change(stint, context),
                        TrialPart.of(trial(kept), kept.car().name()),
                        OrderPart.of(laps),
                        story(kept.number()),
                        job)));
    }

    /** The job that turns items on a stint; none when it is done, or was stopped or failed: then somebody has to ask again. */
    private long job(OpenStint stint) {
        if (stint.proposal().isPresent()) {
            return 0;
        }
        Optional<Job> last = shelf.job(stint.laps());
        return trouble(stint).isEmpty()
                ? last.filter(job -> !job.state().over())
                        .orElseGet(() -> shelf.propose(stint))
                        .id()
                : 0;
    }

    private String trouble(OpenStint stint) {
        return shelf.job(stint.laps())
                .filter(job -> stint.proposal().isEmpty())
                .filter(job -> job.state() == Job.State.FAILED || job.state() == Job.State.STOPPED)
                .map(Job::message)
                .orElse("");
    }

    private static String name(KeptStint stint) {
        return "Stint " + stint.number();
    }

    private static List<String> facts(KeptStint stint) {
        return List.of(
                name(stint),
                stint.driver().name(),
                stint.circuit().name(),
                stint.stint().goodLaps() + " of " + stint.stint().laps() + " laps used",
                stint.car().name() + ", setup " + stint.setup().number());
    }

    private List<String> story(long stint) {
        return new StoryDesk(logbook)
                .about(stint).stream().map(entry -> entry.words()).toList();
    }

    private Optional<TrialStatus> trial(KeptStint stint) {
        return TrialStatus.of(logbook, stint.car().id());
    }

    private ChangePart change(OpenStint stint, Context context) {
        return ChangePart.of(stint, trouble(stint), trial(stint.laps().stint()), Frame.figures(context));
    }

    private void whatIf(Context context) {
        List<String> words = context.queryParams("turn");
        if (words.isEmpty()) {
            throw new WrongChange("nothing is turned: name an item, such as front_bar=3.");
        }
        OpenStint stint = ready(context);
        context.json(WhatIf.of(stint, words, context.queryParam("rough") != null, Frame.figures(context))
                .orElseThrow(() -> new LogbookProblem("nothing can be predicted from these laps: "
                        + stint.answer().diagnosis().reason() + ".")));
    }

    private void openTrial(Context context) {
        TrialWish wish = context.bodyAsClass(TrialWish.class);
        OpenStint stint = ready(context);
        PlanAnswer plan = trials.plan(stint.laps(), stint.answer(), wish.changes(), Optional.of(wish.together()));
        PlanAnswer.Opened opened = plan.opened()
                .orElseThrow(
                        () -> new LogbookProblem(
                                "too few laps tell this driver's scatter, so that no plan can be made. Drive more laps as the car is."));
        context.json(new Told("Trial " + opened.number() + " is planned: runs " + opened.order() + " of "
                + opened.laps() + " laps, this stint is the first."));
    }

    private void order(Context context) {
        boolean good = context.bodyAsClass(Order.class).good();
        long number = PathNumber.of(context, "number", "stint");
        context.json(new Told(new Amending(logbook).amend(number, Amendment.order(good))));
    }

    private void brief(Context context) {
        OpenStint stint = ready(context);
        ProposalAnswer proposed = new ProposalAnswer(
                stint.answer(),
                stint.proposal()
                        .orElseThrow(
                                () -> new LogbookProblem("the items are still being turned. Wait, then ask again.")));
        Headers.document(
                context, BriefReport.html(BriefRequest.of(stint.laps().stint(), proposed), Frame.figures(context)));
    }

    private KeptLaps kept(Context context) {
        return shelf.kept(PathNumber.of(context, "number", "stint"));
    }

    private OpenStint ready(Context context) {
        KeptLaps laps = kept(context);
        return shelf.ready(laps)
                .orElseThrow(() -> new LogbookProblem(
                        laps.name() + " is not open any more. Load its page again; it is then read anew."));
    }
}
