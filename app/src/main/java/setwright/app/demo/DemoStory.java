package setwright.app.demo;

import java.util.Optional;
import setwright.core.judgement.Finding;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.simulation.fault.Fault;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialTarget;

/**
 * The story with its evidence. What comes after the coached laps is there as far as the laps call for it.
 *
 * @param car        what the car is
 * @param circuit    where
 * @param fault      what really is wrong, told at the end
 * @param loose      the driver as he came
 * @param coached    the same driver, steady
 * @param problem    the first finding of the coached laps
 * @param technique  what was tried with the feet, and the laps
 * @param proposal   which change, of all that were weighed; empty when the laps call for none
 * @param changed    laps with the change
 * @param again      laps without it once more
 * @param trial      what the three stints say together
 * @param costS      what the fault really costs a lap: faulty less balanced car, both learnt by the steady driver, s
 */
public record DemoStory(
        String car,
        String circuit,
        Optional<Fault> fault,
        DemoStint loose,
        DemoStint coached,
        Optional<Finding> problem,
        Optional<Tried> technique,
        Optional<Proposal> proposal,
        Optional<DemoStint> changed,
        Optional<DemoStint> again,
        Optional<Trial> trial,
        double costS) {
    /**
     * A technique that was tried.
     *
     * @param technique   what
     * @param stint       laps with it
     * @param balanceDeg  change of the target's balance, deg; positive is the way that was wanted
     * @param lapTimeS    change of the lap time, s
     */
    public record Tried(Technique technique, DemoStint stint, Difference balanceDeg, Difference lapTimeS) {}

    /** Returns the change that was made. */
    public Optional<Candidate> chosen() {
        return proposal.flatMap(Proposal::chosen);
    }

    /** Returns what the change is meant to cure. */
    public Optional<TrialTarget> target() {
        return problem.map(TrialTarget::of);
    }
}
