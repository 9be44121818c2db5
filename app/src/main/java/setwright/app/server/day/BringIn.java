package setwright.app.server.day;

import java.io.IOException;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Added;
import setwright.app.logbook.Adding;
import setwright.app.server.job.JobProgress;
import setwright.app.units.Figures;
import setwright.logbook.Logbook;

/** Reads a recording in as part of a job, and tells the page where it is. */
final class BringIn {
    private BringIn() {}

    /**
     * Reads it in, unless it is there already.
     *
     * @throws IOException when a file cannot be read or written
     */
    static Added into(Logbook logbook, AddRequest request, JobProgress progress) throws IOException {
        Added added = new Adding(logbook).add(request, progress);
        progress.ready(
                Figures.capital(added.stint().name()) + (added.known() ? " is this recording already." : " is in."),
                "/stints/" + added.stint().number());
        return added;
    }
}
