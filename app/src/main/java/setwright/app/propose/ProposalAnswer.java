package setwright.app.propose;

import setwright.app.evidence.Answer;
import setwright.core.proposal.Proposal;

/**
 * What is proposed, with the laps it rests on.
 *
 * @param answer    the laps judged
 * @param proposal  what to do next
 */
public record ProposalAnswer(Answer answer, Proposal proposal) {}
