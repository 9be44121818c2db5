package setwright.app.server.stint;

import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.core.proposal.Foresight;
import setwright.core.proposal.Proposal;

/** A stint that was read and judged, and what was proposed for it once that is known. */
public final class OpenStint {
    private final KeptLaps laps;
    private final Answer answer;
    private Optional<Foresight> foresight = Optional.empty();
    private volatile Optional<Proposal> proposal = Optional.empty();

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

    /** Returns what is proposed; empty as long as items are still being turned. */
    public Optional<Proposal> proposal() {
        return proposal;
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

    void proposed(Proposal found) {
        proposal = Optional.of(found);
    }

    /** Tells whether nothing that it was judged by has changed since: its car, its setup, its circuit. */
    boolean isOf(KeptLaps now) {
        return laps.stint().setup().id() == now.stint().setup().id()
                && laps.stint().circuit().id() == now.stint().circuit().id();
    }
}
