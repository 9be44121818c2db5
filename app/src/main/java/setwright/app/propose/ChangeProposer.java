package setwright.app.propose;

import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;
import setwright.core.proposal.LearntEffects;
import setwright.core.proposal.Proposal;

/** Chooses what to change on the car of a diagnosis. */
@FunctionalInterface
public interface ChangeProposer {

    /**
     * Proposes the one change, or none.
     *
     * @param diagnosis  the laps and what was seen in them
     * @param car        as it was driven
     * @param learnt     what changes did on this car when they were tried
     */
    Proposal propose(Diagnosis diagnosis, CarSheet car, LearntEffects learnt);

    /** Proposes for a car on which nothing was tried. */
    default Proposal propose(Diagnosis diagnosis, CarSheet car) {
        return propose(diagnosis, car, LearntEffects.none());
    }
}
