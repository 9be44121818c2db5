package setwright.app.server.stint;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.report.Report;
import setwright.app.report.ReportView;
import setwright.app.units.Figures;
import setwright.core.proposal.Foresight;
import setwright.core.proposal.Proposal;

/** A stint that was read and judged, and what was proposed for it once that is known. */
public final class OpenStint {
    private final KeptLaps laps;
    private final Answer answer;
    private final Map<Figures, ReportView> reports = new HashMap<>();
    private Optional<Foresight> foresight = Optional.empty();
    private Optional<Proposal> proposal = Optional.empty();
    private long knownVerdict = -1;
    private Optional<LapColumns> columns = Optional.empty();

    OpenStint(KeptLaps laps, Answer answer) {
        this.laps = laps;
        this.answer = answer;
    }

    /** Returns the laps as they are kept. */
    public KeptLaps laps() {
        return laps;
    }

    /** Returns what was found in them. */
    public Answer answer() {
        return answer;
    }

    /** Returns what is proposed; empty as long as items are still being turned, and once a later verdict has taught more. */
    public synchronized Optional<Proposal> proposal() {
        return proposal.filter(known -> knownVerdict == laps.lastVerdict());
    }

    /** Returns the chain of reasoning as it is shown; put together once for each system of units. */
    synchronized ReportView report(Figures figures) {
        return reports.computeIfAbsent(figures, asked -> Report.view(answer, asked));
    }

    /** Returns what is drawn over distance or time. */
    synchronized LapColumns columns() {
        if (columns.isEmpty()) {
            columns = Optional.of(LapColumns.of(answer));
        }
        return columns.get();
    }

    /** Returns what answers questions of other setups; empty where the car could not be fitted. */
    synchronized Optional<Foresight> foresight() {
        if (foresight.isEmpty()) {
            foresight = answer.diagnosis()
                    .grounds()
                    .car()
                    .map(car -> new Foresight(answer.diagnosis(), answer.car(), car).ready());
        }
        return foresight;
    }

    /**
     * Keeps what was proposed.
     *
     * @param verdict  the last one that it knew of
     */
    synchronized void proposed(Proposal found, long verdict) {
        proposal = Optional.of(found);
        knownVerdict = verdict;
    }

    /** Tells whether nothing that it was judged by has changed since: its car, its setup, its circuit, its baseline and that one's setup. */
    boolean isOf(KeptLaps now) {
        return laps.basis().equals(now.basis());
    }
}
