package setwright.app.diagnose;

import java.nio.file.Path;
import java.util.Optional;
import setwright.intake.gather.RecordingFiles;

/**
 * What is to be read, and what is to be kept of it.
 *
 * @param recording    the recorded laps
 * @param car          car sheet; without it the car is assumed
 * @param map          channel map; without it one is proposed
 * @param circuit      circuit kept from another recording
 * @param saveCircuit  where to keep the circuit
 * @param writeMap     where to write the channel map that was used
 */
public record DiagnoseRequest(
        RecordingFiles recording,
        Optional<Path> car,
        Optional<Path> map,
        Optional<Path> circuit,
        Optional<Path> saveCircuit,
        Optional<Path> writeMap) {
    /** Asks for an answer alone; nothing is kept. */
    public static DiagnoseRequest of(
            RecordingFiles recording, Optional<Path> car, Optional<Path> map, Optional<Path> circuit) {
        return new DiagnoseRequest(recording, car, map, circuit, Optional.empty(), Optional.empty());
    }

    /** The same of laps that are one file. */
    public static DiagnoseRequest of(Path recording, Optional<Path> car, Optional<Path> map, Optional<Path> circuit) {
        return of(RecordingFiles.of(recording), car, map, circuit);
    }
}
