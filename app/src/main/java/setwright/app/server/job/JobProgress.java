package setwright.app.server.job;

import java.util.concurrent.CancellationException;
import setwright.app.diagnose.Progress;

/** Told by a job how far it has come; ends the job at the next step once it was told to stop. */
public final class JobProgress implements Progress {
    private final Jobs jobs;
    private final long id;
    private int begun;

    JobProgress(Jobs jobs, long id) {
        this.jobs = jobs;
        this.id = id;
    }

    /**
     * {@inheritDoc}
     *
     * @throws CancellationException when the job was told to stop
     */
    @Override
    public void step(String what) {
        if (jobs.toldToStop(id)) {
            throw new CancellationException("stopped");
        }
        int done = begun++;
        jobs.change(id, job -> job.at(what, done));
    }

    /** Tells what came of it and where it can be looked at, before all of it is done or at its end. */
    public void ready(String message, String link) {
        jobs.change(id, job -> job.ready(message, link));
    }
}
