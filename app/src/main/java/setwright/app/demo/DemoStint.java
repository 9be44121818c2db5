package setwright.app.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import setwright.app.evidence.Answer;
import setwright.core.circuit.Lap;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
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

    /** Returns the excess balance of each judged lap, deg, understeer positive: the mean over the target's corners. */
    public List<Double> excessDeg(TrialTarget target) {
        Map<Integer, List<Double>> laps = new TreeMap<>();
        for (CornerPass pass : answer.diagnosis().passes()) {
            OptionalDouble excess = excess(pass, target.phase());
            if (target.corners().contains(pass.corner()) && excess.isPresent()) {
                laps.computeIfAbsent(pass.lap(), lap -> new ArrayList<>()).add(Math.toDegrees(excess.getAsDouble()));
            }
        }
        return laps.values().stream()
                .map(values -> values.stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .toList();
    }

    private static OptionalDouble excess(CornerPass pass, Phase phase) {
        return pass.phase(phase)
                .map(found -> OptionalDouble.of(found.excessRad()))
                .filter(value -> Double.isFinite(value.getAsDouble()))
                .orElse(OptionalDouble.empty());
    }
}
