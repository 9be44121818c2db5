package setwright.app.server.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import setwright.app.server.view.PathNumber;

/** Tells the page of jobs as they go on, and stops them. */
public final class JobRoutes {
    /** Tabs that may follow at once; nobody has as many. */
    private static final int MOST_CLIENTS = 64;

    private final Jobs jobs;
    private final AtomicInteger clients = new AtomicInteger();
    /** Another one each time the program is started: a page of an earlier run notices. */
    private final String run = UUID.randomUUID().toString();

    /** Makes them. */
    public JobRoutes(Jobs jobs) {
        this.jobs = jobs;
    }

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.get("/jobs", context -> context.json(jobs.all()));
        routes.sse("/jobs/stream", this::follow);
        routes.post("/jobs/{id}/stop", this::stop);
    }

    private void follow(SseClient client) {
        if (clients.incrementAndGet() > MOST_CLIENTS) {
            clients.decrementAndGet();
            client.close();
            return;
        }
        client.keepAlive();
        Consumer<List<Job>> listener = all -> client.sendEvent("jobs", all);
        client.onClose(() -> {
            clients.decrementAndGet();
            jobs.forget(listener);
        });
        client.sendEvent("run", run);
        jobs.listen(listener);
        jobs.tell();
    }

    private void stop(Context context) {
        jobs.stop(PathNumber.of(context, "id", "job"));
        context.json(jobs.all());
    }
}
