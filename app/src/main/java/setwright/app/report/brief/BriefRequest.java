package setwright.app.report.brief;

import setwright.app.logbook.KeptStint;
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
public record BriefRequest(String laps, String driver, String circuit, String car, ProposalAnswer proposed) {
    /** Returns that of a stint of the logbook. */
    public static BriefRequest of(KeptStint stint, ProposalAnswer proposed) {
        return new BriefRequest(
                stint.name(),
                stint.driver().name(),
                stint.circuit().name(),
                stint.car().name() + ", setup " + stint.setup().number(),
                proposed);
    }
}
