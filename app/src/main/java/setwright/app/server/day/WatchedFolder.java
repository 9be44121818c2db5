package setwright.app.server.day;

import java.io.IOException;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Added;
import setwright.app.logbook.Adding;
import setwright.app.server.job.JobProgress;
import setwright.app.server.job.Jobs;
import setwright.app.server.stint.StintShelf;
import setwright.app.watch.FolderWatch;
import setwright.intake.gather.RecordingFiles;
import setwright.logbook.Logbook;

/** Reads in what a logger puts into a folder, and has it judged, while the page is open. */
public final class WatchedFolder implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WatchedFolder.class);
    private static final long PAUSE_MS = 1000;

    private final FolderWatch watch;
    private final Logbook logbook;
    private final StintShelf shelf;
    private final Jobs jobs;
    private final Thread thread;

    /** Begins. */
    public WatchedFolder(FolderWatch watch, Logbook logbook, StintShelf shelf, Jobs jobs) {
        this.watch = watch;
        this.logbook = logbook;
        this.shelf = shelf;
        this.jobs = jobs;
        this.thread = new Thread(this::follow, "watched folder");
        thread.setDaemon(true);
        thread.start();
    }

    private void follow() {
        boolean told = false;
        while (!Thread.currentThread().isInterrupted()) {
            try {
                watch.complete(System.nanoTime()).forEach(this::bringIn);
                told = false;
            } catch (IOException e) {
                if (!told) { // a stick that was pulled out comes back
                    LOG.warn("{} cannot be read", watch.folder(), e);
                }
                told = true;
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    private void bringIn(Path file) {
        jobs.start(
                "watched " + file, "Reading in " + file.getFileName(), Adding.STEPS, progress -> add(file, progress));
    }

    private void add(Path file, JobProgress progress) throws IOException {
        for (Added added : BringIn.into(logbook, AddRequest.asBefore(RecordingFiles.of(file)), progress)) {
            if (!added.known()) {
                shelf.open(shelf.kept(added.stint().number()));
            }
        }
    }

    @Override
    public void close() {
        thread.interrupt();
    }
}
