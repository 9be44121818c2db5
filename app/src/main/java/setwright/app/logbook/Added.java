package setwright.app.logbook;

import java.util.List;
import java.util.Optional;
import setwright.core.circuit.Lap;
import setwright.core.recording.Calibration;

/**
 * A recording that is in the logbook.
 *
 * @param stint         what it became
 * @param known         whether it was there already; then nothing was done
 * @param setup         what happened to the car's setup
 * @param newCircuit    whether the circuit is new
 * @param laps          as they were cut; empty when it was there already
 * @param calibrations  what was corrected on the way in
 * @param remarks       what was understood or put aside, each in a sentence
 */
public record Added(
        KeptStint stint,
        boolean known,
        Optional<SetupStep> setup,
        boolean newCircuit,
        List<Lap> laps,
        List<Calibration> calibrations,
        List<String> remarks) {
    public Added {
        laps = List.copyOf(laps);
        calibrations = List.copyOf(calibrations);
        remarks = List.copyOf(remarks);
    }
}
