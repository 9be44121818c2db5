package setwright.app.trial;

import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.trial.PlannedTrial;
import setwright.core.trial.PlannedTrial.Expected;
import setwright.core.trial.TrialTarget;

/**
 * How a change is to be tried.
 *
 * @param answer    the laps judged
 * @param proposal  what to change
 * @param plans     with what they would show; empty with too few laps
 */
public record PlanAnswer(Answer answer, Proposal proposal, List<PlannedTrial> plans) {
    public PlanAnswer {
        plans = List.copyOf(plans);
    }

    /** Plans the trial of what is proposed; where nothing is, of any change. */
    public static PlanAnswer of(Answer answer, Proposal proposal) {
        Optional<Candidate> chosen = proposal.chosen();
        Optional<Expected> expected = chosen.map(candidate -> new Expected(
                candidate.prediction().lapTimeS().central(), candidate.target().central()));
        return new PlanAnswer(
                answer, proposal, PlannedTrial.of(answer.diagnosis(), TrialTarget.of(answer.diagnosis()), expected));
    }
}
