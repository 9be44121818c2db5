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
 * @param baseline     laps to hold them against
 * @param saveCircuit  where to keep the circuit
 * @param writeMap     where to write the channel map that was used
 */
public record DiagnoseRequest(
        RecordingFiles recording,
        Optional<Path> car,
        Optional<Path> map,
        Optional<Path> circuit,
        Optional<BaselineFile> baseline,
        Optional<Path> saveCircuit,
        Optional<Path> writeMap) {
    /** Asks for an answer alone; nothing is kept. */
    public static DiagnoseRequest of(
            RecordingFiles recording, Optional<Path> car, Optional<Path> map, Optional<Path> circuit) {
        return new DiagnoseRequest(recording, car, map, circuit, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Returns the same request, held against other laps. */
    public DiagnoseRequest against(Optional<BaselineFile> laps) {
        return new DiagnoseRequest(recording, car, map, circuit, laps, saveCircuit, writeMap);
    }

    /** Returns the same request on a circuit. */
    DiagnoseRequest on(Optional<Path> otherCircuit, Optional<Path> save) {
        return new DiagnoseRequest(recording, car, map, otherCircuit, baseline, save, writeMap);
    }

    /** The same of laps that are one file. */
    public static DiagnoseRequest of(Path recording, Optional<Path> car, Optional<Path> map, Optional<Path> circuit) {
        return of(RecordingFiles.of(recording), car, map, circuit);
    }
}
