package setwright.app.server.stint;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import setwright.app.diagnose.Diagnoser;
import setwright.app.evidence.Answer;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.propose.ChangeProposer;
import setwright.app.server.job.Job;
import setwright.app.server.job.JobProgress;
import setwright.app.server.job.Jobs;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.proposal.Proposal;

/** The stints that were looked at last; the one that nobody looked at for longest makes room. */
public final class StintShelf {
    /** Each takes up to a hundred megabytes. */
    private static final int PLACES = 4;

    private final StintDesk desk;
    private final ChangeProposer proposer;
    private final Jobs jobs;
    private final Map<Long, OpenStint> open = new LinkedHashMap<>(PLACES, 0.75f, true);

    /** Makes an empty one. */
    public StintShelf(StintDesk desk, ChangeProposer proposer, Jobs jobs) {
        this.desk = desk;
        this.proposer = proposer;
        this.jobs = jobs;
    }

    /** Returns a stint as it is kept. */
    public KeptLaps kept(long number) {
        return desk.laps(Optional.of(number));
    }

    /** Returns a stint when it was read and judged already, by what is known of its car now. */
    public Optional<OpenStint> ready(KeptLaps laps) {
        synchronized (open) {
            return Optional.ofNullable(open.get(laps.stint().number())).filter(stint -> stint.isOf(laps));
        }
    }

    /** Sees to it that a stint is read and judged, and that something is proposed for it. */
    public Job open(KeptLaps laps) {
        return jobs.start(
                laps.basis(),
                "Reading " + laps.name(),
                Diagnoser.STEPS + 1,
                progress -> propose(read(laps, progress), progress));
    }

    /** Sees to it that something is proposed for a stint that was read already. */
    public Job propose(OpenStint stint) {
        return jobs.start(
                stint.laps().basis(),
                "Turning items on " + stint.laps().name(),
                1,
                progress -> propose(stint, progress));
    }

    /** Returns the last job about a stint. */
    public Optional<Job> job(KeptLaps laps) {
        return jobs.find(laps.basis());
    }

    private OpenStint read(KeptLaps laps, JobProgress progress) throws IOException {
        Answer answer = laps.answer(progress);
        laps.found(answer);
        OpenStint stint = new OpenStint(laps, answer);
        stint.report(Figures.forPage(UnitSystem.METRIC)); // most will ask for it, and at once
        synchronized (open) {
            open.put(laps.stint().number(), stint);
            if (open.size() > PLACES) {
                open.remove(open.keySet().iterator().next());
            }
        }
        progress.ready(laps.name() + " is read.", "/stints/" + laps.stint().number());
        return stint;
    }

    private void propose(OpenStint stint, JobProgress progress) {
        KeptLaps laps = stint.laps();
        progress.step("turning each item on the laps");
        long verdict = laps.lastVerdict();
        Proposal proposal =
                proposer.propose(stint.answer().diagnosis(), stint.answer().car(), laps.learnt());
        laps.proposed(proposal);
        stint.proposed(proposal, verdict);
        stint.foresight(); // so that the first question is answered as soon as the others
    }
}
