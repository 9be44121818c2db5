package setwright.app.propose;

import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;
import setwright.core.proposal.Proposal;

/** Chooses what to change on the car of a diagnosis. */
@FunctionalInterface
public interface ChangeProposer {

    /**
     * Proposes the one change, or none.
     *
     * @param diagnosis  the laps and what was seen in them
     * @param car        as it was driven
     */
    Proposal propose(Diagnosis diagnosis, CarSheet car);
}
