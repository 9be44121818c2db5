package setwright.app.propose;

import java.io.IOException;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.core.proposal.Proposal;

/**
 * What is proposed, with the laps it rests on.
 *
 * @param answer    the laps judged
 * @param proposal  what to do next
 */
public record ProposalAnswer(Answer answer, Proposal proposal) {
    /**
     * Judges laps and proposes what to do; notes both where notes are kept. Takes a step more than the judgement.
     *
     * @throws IOException when something cannot be read or written
     */
    public static ProposalAnswer of(LapSource laps, ChangeProposer proposer, Progress progress) throws IOException {
        Answer answer = laps.answer(progress);
        laps.found(answer);
        progress.step("turning each item on the laps");
        Proposal proposal = proposer.propose(answer.diagnosis(), answer.car(), laps.learnt());
        laps.proposed(proposal);
        return new ProposalAnswer(answer, proposal);
    }
}
