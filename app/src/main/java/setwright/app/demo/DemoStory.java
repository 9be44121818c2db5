package setwright.app.demo;

import java.util.List;
import java.util.Optional;
import setwright.core.judgement.Finding;
import setwright.core.simulation.fault.Fault;

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
 * @param chosen     the change that was made, with the next best ones behind it
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
        List<ChangeChoice> chosen,
        Optional<DemoStint> changed,
        Optional<DemoStint> again,
        Optional<BackToBack> trial,
        double costS) {
    public DemoStory {
        chosen = List.copyOf(chosen);
    }

    /**
     * A technique that was tried.
     *
     * @param technique   what
     * @param stint       laps with it
     * @param balanceDeg  change of the target's balance, deg; positive is the way that was wanted
     * @param lapTimeS    change of the lap time, s
     */
    public record Tried(Technique technique, DemoStint stint, Difference balanceDeg, Difference lapTimeS) {}

    /** Returns what the change is meant to cure. */
    public Optional<Target> target() {
        return problem.map(Target::of);
    }
}
