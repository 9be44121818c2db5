package setwright.core.proposal;

import java.util.List;
import java.util.Optional;
import setwright.core.judgement.Finding;

/**
 * What to do next about a car.
 *
 * @param target      the finding that is to be cured; empty when the car is not to be changed
 * @param chosen      the one change; empty when there is none worth making
 * @param others      changes that were weighed and not chosen though nothing forbids them, best first
 * @param refused     changes that promise something and are not to be made, with why, best first
 * @param expect      what the next stint should show if the change is right, and what would refute it, one plain sentence each
 * @param laps        laps a side that it takes to see the change in the balance; 0 without a change
 * @param refutation  measured changes of the target's balance that refute the change; empty without one, or where the scatter is not known
 * @param reason      why this, in one or two plain sentences
 */
public record Proposal(
        Optional<Finding> target,
        Optional<Candidate> chosen,
        List<Candidate> others,
        List<Candidate> refused,
        List<String> expect,
        int laps,
        Optional<Refutation> refutation,
        String reason) {
    public Proposal {
        others = List.copyOf(others);
        refused = List.copyOf(refused);
        expect = List.copyOf(expect);
    }
}
