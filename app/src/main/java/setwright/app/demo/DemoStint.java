package setwright.app.demo;

import java.util.List;
import setwright.app.evidence.Answer;
import setwright.core.circuit.Lap;

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
}
