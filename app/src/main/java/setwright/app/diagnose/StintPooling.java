package setwright.app.diagnose;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.app.evidence.PooledAnswer;
import setwright.core.pooling.DriverStint;
import setwright.core.pooling.Pooler;

/** Judges several recordings of one car and holds them against each other. */
public final class StintPooling {
    private StintPooling() {}

    /**
     * Reads and judges all, on the circuit that the first one shows when none is given, so that corner 4 is the same for all.
     *
     * @param first    what is wanted of the first recording
     * @param others   further recordings of the same car with the same setup
     * @param drivers  one name for each recording
     * @throws IOException when a file cannot be read or written
     */
    public static PooledAnswer diagnose(
            Diagnoser diagnoser, DiagnoseRequest first, List<Path> others, List<String> drivers, Progress progress)
            throws IOException {
        List<DiagnoseRequest> requests = new ArrayList<>(List.of(first));
        for (Path other : others) {
            requests.add(DiagnoseRequest.of(other, first.car(), first.map(), Optional.empty())
                    .against(first.baseline()));
        }
        List<Answer> answers = SameCircuit.diagnose(diagnoser, requests, progress);
        return pool(answers, drivers);
    }

    /**
     * Holds answers against each other.
     *
     * @param answers  on one circuit
     * @param drivers  one name for each
     */
    public static PooledAnswer pool(List<Answer> answers, List<String> drivers) {
        List<DriverStint> stints = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            stints.add(new DriverStint(drivers.get(i), answers.get(i).diagnosis()));
        }
        return new PooledAnswer(answers, Pooler.pool(stints));
    }
}
