package setwright.app.server;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.app.diagnose.Progress;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Adding;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.LapReplay;
import setwright.app.watch.FolderWatch;
import setwright.core.judgement.Diagnostician;
import setwright.core.proposal.Proposer;
import setwright.logbook.Logbook;

/** A logbook of a test with the page that is served from it. */
public final class ServedLogbook implements AutoCloseable {
    private final Logbook logbook;
    private final PageServer server;

    private ServedLogbook(Logbook logbook, PageServer server) {
        this.logbook = logbook;
        this.server = server;
    }

    /** Begins one in a folder. */
    public static ServedLogbook in(Path folder) {
        return in(folder, PageWork.USUAL_UPLOAD);
    }

    /** Begins one that takes no longer files than so many bytes. */
    public static ServedLogbook in(Path folder, long longestUpload) {
        return in(folder, longestUpload, Optional.empty());
    }

    /** Begins one that reads in what comes into another folder. */
    public static ServedLogbook in(Path folder, FolderWatch watched) {
        return in(folder, PageWork.USUAL_UPLOAD, Optional.of(watched));
    }

    private static ServedLogbook in(Path folder, long longestUpload, Optional<FolderWatch> watched) {
        Logbook logbook = Logbook.open(folder.toString(), Optional.empty(), true);
        PageWork work = new PageWork(
                logbook,
                new StintDesk(logbook, Diagnostician::diagnose),
                Proposer::propose,
                LapReplay::predict,
                longestUpload,
                watched);
        return new ServedLogbook(logbook, PageServer.start(work, 0));
    }

    /** Reads a recording in. */
    public void add(Path recording, Path car, String name, String driver, String circuit) throws IOException {
        new Adding(logbook).add(AddRequest.of(recording, car, name, driver, circuit), Progress.silent());
    }

    /** Returns the logbook. */
    public Logbook logbook() {
        return logbook;
    }

    /** Returns where its page is, ending with a slash. */
    public String address() {
        return server.address();
    }

    @Override
    public void close() {
        server.close();
    }
}
