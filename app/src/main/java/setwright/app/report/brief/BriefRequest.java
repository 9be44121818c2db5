package setwright.app.report.brief;

import setwright.app.propose.ProposalAnswer;

/**
 * What a brief is of.
 *
 * @param laps      what people call them
 * @param driver    who drove; empty when nobody said
 * @param circuit   where
 * @param car       in which car, with which setup
 * @param proposed  the answer and what is to be done
 */
public record BriefRequest(String laps, String driver, String circuit, String car, ProposalAnswer proposed) {}
