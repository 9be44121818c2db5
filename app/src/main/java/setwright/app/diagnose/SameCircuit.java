package setwright.app.diagnose;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.evidence.Answer;

/** Judges several recordings of one circuit, so that corner 4 is the same in all. */
public final class SameCircuit {
    private SameCircuit() {}

    /**
     * Reads and judges all, on the circuit that the first one shows when it names none.
     *
     * @param requests  what is wanted of each; circuits named by others than the first do not count
     * @throws IOException when a file cannot be read or written
     */
    public static List<Answer> diagnose(Diagnoser diagnoser, List<DiagnoseRequest> requests, Progress progress)
            throws IOException {
        DiagnoseRequest first = requests.get(0);
        Path folder = Files.createTempDirectory("setwright-circuit");
        Path kept = first.circuit().or(first::saveCircuit).orElse(folder.resolve("circuit.json"));
        try {
            List<Answer> answers = new ArrayList<>();
            answers.add(diagnoser.diagnose(
                    first.on(first.circuit(), first.circuit().isPresent() ? first.saveCircuit() : Optional.of(kept)),
                    progress));
            for (DiagnoseRequest other : requests.subList(1, requests.size())) {
                answers.add(diagnoser.diagnose(other.on(Optional.of(kept), Optional.empty()), progress));
            }
            return answers;
        } finally {
            Files.deleteIfExists(folder.resolve("circuit.json"));
            Files.deleteIfExists(folder);
        }
    }
}
