package setwright.app.server.day;

import java.io.IOException;
import java.util.List;
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
    static List<Added> into(Logbook logbook, AddRequest request, JobProgress progress) throws IOException {
        List<Added> added = new Adding(logbook).add(request, progress);
        Added last = added.get(added.size() - 1);
        progress.ready(
                added.size() == 1
                        ? Figures.capital(last.stint().name())
                                + (last.known() ? " is this recording already." : " is in.")
                        : "Stints " + added.get(0).stint().number() + " to "
                                + last.stint().number()
                                + (last.known()
                                        ? " are this recording already."
                                        : " are in: the recording lasts longer than a stint."),
                "/stints/" + last.stint().number());
        return added;
    }
}
