package setwright.app.server.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import setwright.app.failure.Trouble;

/** The jobs of a server: one runs, the others wait their turn; what failed takes nothing else with it. */
public final class Jobs implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Jobs.class);
    private static final int KEPT = 20;

    private final ExecutorService worker = thread("job");
    /** Of its own: a browser that is slow to listen shall not hold up the work. */
    private final ExecutorService teller = thread("jobs' teller");

    private final TreeMap<Long, Job> jobs = new TreeMap<>();
    private final Map<String, Long> byKey = new HashMap<>();
    private final List<Consumer<List<Job>>> listeners = new CopyOnWriteArrayList<>();
    private long last;

    private static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** A piece of work. */
    @FunctionalInterface
    public interface Work {
        /** Does it, and tells how far it has come. */
        void run(JobProgress progress) throws Exception;
    }

    /**
     * Takes on a piece of work, unless the same is waiting or running already.
     *
     * @param key    the same for the same work
     * @param title  what it is, for people
     * @param steps  that it will tell
     */
    public Job start(String key, String title, int steps, Work work) {
        Job job;
        synchronized (this) {
            Optional<Job> same = find(key).filter(found -> !found.state().over());
            if (same.isPresent()) {
                return same.get();
            }
            job = Job.waiting(++last, title, steps);
            jobs.put(job.id(), job);
            byKey.put(key, job.id());
            forgetOld();
        }
        long id = job.id();
        worker.execute(() -> run(id, work));
        tell();
        return job;
    }

    /** Returns the last job of a key that is remembered. */
    public synchronized Optional<Job> find(String key) {
        return Optional.ofNullable(byKey.get(key)).map(jobs::get);
    }

    /** Returns the jobs that are remembered, the newest first. */
    public synchronized List<Job> all() {
        return List.copyOf(jobs.descendingMap().values());
    }

    /** Tells a job to stop; one that runs does so at its next step. */
    public void stop(long id) {
        change(id, job -> switch (job.state()) {
            case WAITING -> job.over(Job.State.STOPPED, "Stopped before it began.");
            case RUNNING -> job.toldToStop();
            default -> job;
        });
    }

    /** Tells somebody of every change, from now on. */
    public void listen(Consumer<List<Job>> listener) {
        listeners.add(listener);
    }

    /** Tells somebody no more. */
    public void forget(Consumer<List<Job>> listener) {
        listeners.remove(listener);
    }

    @Override
    public void close() {
        worker.shutdownNow();
        teller.shutdownNow();
    }

    synchronized boolean toldToStop(long id) {
        return Optional.ofNullable(jobs.get(id)).filter(Job::stopping).isPresent();
    }

    void change(long id, UnaryOperator<Job> step) {
        synchronized (this) {
            jobs.computeIfPresent(id, (key, job) -> step.apply(job));
        }
        tell();
    }

    private void run(long id, Work work) {
        synchronized (this) {
            Job job = jobs.get(id);
            if (job == null || job.state().over()) {
                return;
            }
        }
        change(id, Job::running);
        try {
            work.run(new JobProgress(this, id));
            change(id, job -> job.over(Job.State.DONE, job.message()));
        } catch (CancellationException e) {
            change(id, job -> job.over(Job.State.STOPPED, "Stopped."));
        } catch (Exception | Error e) { // whatever it is, it is told, and the next job does not suffer for it
            Trouble trouble = Trouble.of(e);
            if (trouble.kind() == Trouble.Kind.FAULT) {
                LOG.warn("a job failed", e);
            }
            change(id, job -> job.over(Job.State.FAILED, trouble.message()));
        }
    }

    private void forgetOld() {
        while (jobs.size() > KEPT) {
            Optional<Long> oldest = jobs.values().stream()
                    .filter(job -> job.state().over())
                    .map(Job::id)
                    .findFirst();
            if (oldest.isEmpty()) {
                return;
            }
            jobs.remove(oldest.get());
            byKey.values().removeIf(oldest.get()::equals);
        }
    }

    /** Tells all who listen how things stand. */
    void tell() {
        if (!teller.isShutdown()) {
            teller.execute(() -> {
                List<Job> now = all();
                listeners.forEach(listener -> listener.accept(now));
            });
        }
    }
}
