package setwright.app.demo;

import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.core.circuit.Lap;
import setwright.core.trial.TrialRuns;
import setwright.core.trial.TrialTarget;

/**
 * A stint of the story.
 *
 * @param name    what people call it
 * @param answer  what the program says to it
 */
public record DemoStint(String name, Answer answer) {

    /** Returns the times of the laps that were judged, s. */
    public List<Double> lapTimesS() {
        return answer.diagnosis().stint().goodLaps().stream().map(Lap::timeS).toList();
    }

    /**
     * Returns it as a run of a trial.
     *
     * @param changed  whether the change was on the car
     */
    TrialRuns.Diagnosed run(boolean changed) {
        return new TrialRuns.Diagnosed(name, changed, answer.diagnosis());
    }

    /**
     * Returns the balance where it is to help on each judged lap of some stints, deg, toward understeer positive: as a trial compares it, less
     * what each corner has on all of these laps. The excess over the reckoned car would not do, as that is fitted to each stint anew.
     */
    public static List<List<Double>> balanceDeg(List<DemoStint> stints, TrialTarget target) {
        List<TrialRuns.Diagnosed> runs =
                stints.stream().map(stint -> stint.run(false)).toList();
        return TrialRuns.of(runs, Optional.of(target)).stream()
                .map(run -> run.laps().stream()
                        .flatMapToDouble(lap -> lap.targetRad().stream())
                        .map(Math::toDegrees)
                        .boxed()
                        .toList())
                .toList();
    }
}
