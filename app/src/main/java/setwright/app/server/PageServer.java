package setwright.app.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.staticfiles.Location;
import io.javalin.util.JavalinBindException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import setwright.app.failure.Trouble;
import setwright.app.logbook.LogbookTrials;
import setwright.app.report.Page;
import setwright.app.server.day.DayRoutes;
import setwright.app.server.day.MapRoutes;
import setwright.app.server.day.Uploads;
import setwright.app.server.day.WatchedFolder;
import setwright.app.server.guard.Guard;
import setwright.app.server.guard.Headers;
import setwright.app.server.job.JobRoutes;
import setwright.app.server.job.Jobs;
import setwright.app.server.log.StoryRoutes;
import setwright.app.server.stint.StintRoutes;
import setwright.app.server.stint.StintShelf;
import setwright.app.server.trial.TrialRoutes;
import setwright.app.server.view.Frame;
import setwright.app.server.view.Told;
import setwright.app.watch.FolderWatch;
import tools.jackson.core.JacksonException;

/** Serves the page of a logbook to browsers on this machine, until it is closed. */
public final class PageServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PageServer.class);
    private static final String HOST = "127.0.0.1";
    /** No request but an upload is longer; that is counted while it comes in. */
    private static final long LONGEST_REQUEST = 1 << 16;

    private final Jobs jobs = new Jobs();
    private final Uploads uploads;
    private final Guard guard = new Guard(this::port);
    private final Optional<WatchedFolder> watched;
    private final Javalin javalin;

    private PageServer(PageWork work) {
        this.uploads = new Uploads(work.longestUpload());
        LogbookTrials trials = new LogbookTrials(work.logbook(), work.desk(), work.predictor());
        StintShelf shelf = new StintShelf(work.desk(), work.proposer(), jobs);
        watched = work.watched().map(folder -> new WatchedFolder(folder, work.logbook(), shelf, jobs));
        javalin = Javalin.create(config -> {
            settle(config);
            RoutesConfig routes = config.routes;
            routes.before(context -> {
                Headers.set(context);
                guard.check(context);
            });
            routes.get(
                    "/web/report.css",
                    context -> context.contentType(ContentType.TEXT_CSS)
                            .result(Page.style().text()));
            new DayRoutes(
                            work.logbook(),
                            uploads,
                            jobs,
                            guard.token(),
                            work.watched().map(FolderWatch::folder))
                    .addTo(routes);
            new MapRoutes(work.logbook(), uploads).addTo(routes);
            new StintRoutes(work.logbook(), shelf, trials, guard.token()).addTo(routes);
            new TrialRoutes(work.logbook(), trials, jobs, guard.token()).addTo(routes);
            new StoryRoutes(work.logbook(), guard.token()).addTo(routes);
            new JobRoutes(jobs).addTo(routes);
            routes.exception(HttpResponseException.class, this::refused);
            routes.exception(Exception.class, this::failed);
        });
    }

    /**
     * Starts one.
     *
     * @param port  to listen on; 0 for any that is free
     * @throws PortTaken when somebody else listens there
     */
    public static PageServer start(PageWork work, int port) {
        PageServer server = new PageServer(work);
        try {
            server.javalin.start(HOST, port);
        } catch (RuntimeException e) {
            server.close();
            if (e instanceof JavalinBindException) {
                throw new PortTaken(port, e);
            }
            throw e;
        }
        return server;
    }

    /** Returns where to look. */
    public String address() {
        return "http://" + HOST + ":" + port() + "/";
    }

    private int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        watched.ifPresent(WatchedFolder::close);
        javalin.stop();
        jobs.close();
        uploads.close();
    }

    private static void settle(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LONGEST_REQUEST;
        config.jsonMapper(new PageJson());
        config.staticFiles.add(files -> {
            files.hostedPath = "/web";
            files.directory = "/setwright/app/server/web";
            files.location = Location.CLASSPATH;
        });
    }

    /** What the server's library says by itself is no help; ours is. */
    private void refused(HttpResponseException refusal, Context context) {
        String message = Objects.requireNonNullElse(refusal.getMessage(), "");
        HttpStatus status = HttpStatus.forStatus(refusal.getStatus());
        boolean ours = message.contains(" ") && message.endsWith(".");
        tell(
                context,
                status,
                ours
                        ? message
                        : switch (status) {
                            case NOT_FOUND -> "There is no such page.";
                            case CONTENT_TOO_LARGE -> "That is longer than any request of this page.";
                            default -> "This is nothing that the page asks for.";
                        });
    }

    private void failed(Exception failure, Context context) {
        if (failure instanceof JacksonException) {
            tell(
                    context,
                    HttpStatus.BAD_REQUEST,
                    "The request is not understood. Load the page again, then try once more.");
            return;
        }
        Trouble trouble = Trouble.of(failure);
        if (trouble.kind() == Trouble.Kind.FAULT) {
            LOG.warn("a request failed", failure);
        }
        tell(
                context,
                switch (trouble.kind()) {
                    case WRONG_REQUEST -> HttpStatus.BAD_REQUEST;
                    case BAD_INPUT, NOT_ENOUGH_EVIDENCE -> HttpStatus.UNPROCESSABLE_CONTENT;
                    case FAULT -> HttpStatus.INTERNAL_SERVER_ERROR;
                },
                trouble.message());
    }

    /** What goes wrong: a page for those who came by a link, its words alone for scripts. */
    private void tell(Context context, HttpStatus status, String message) {
        context.status(status);
        if (Objects.requireNonNullElse(context.header("Accept"), "").contains("text/html")) {
            context.html(Page.render(
                    "live/trouble.jte",
                    new TroubleView(
                            Frame.of(
                                    context,
                                    status == HttpStatus.FORBIDDEN ? "" : guard.token(),
                                    "Not this way",
                                    "",
                                    List.of()),
                            message)));
        } else {
            context.json(new Told(message));
        }
    }
}
