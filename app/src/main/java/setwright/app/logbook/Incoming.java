package setwright.app.logbook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.core.circuit.Circuit;
import setwright.core.circuit.Lap;
import setwright.core.recording.Calibration;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.RecordingRow;

/**
 * A stint whose channels are kept and that is about to be entered; nothing that is as long as the recording.
 *
 * @param first         whether it is the first one of its file
 * @param recording     as it will be entered
 * @param circuit       that it was laid on
 * @param row           of the circuit, when the logbook has it
 * @param told          name of the circuit, when it was told
 * @param laps          as they were cut
 * @param calibrations  what was corrected
 * @param trackCelsius  temperature of the track, degC
 * @param remarks       what was understood
 */
record Incoming(
        boolean first,
        RecordingRow recording,
        Circuit circuit,
        Optional<CircuitRow> row,
        Optional<String> told,
        List<Lap> laps,
        List<Calibration> calibrations,
        OptionalDouble trackCelsius,
        List<String> remarks) {
    /**
     * Returns it as one of several of a file.
     *
     * @param number  counted from 0, of those that are kept
     * @param left    what is to be said of parts before it that are not
     */
    Incoming numbered(int number, List<String> left) {
        return new Incoming(
                number == 0,
                recording.from(digest(recording.sourceDigest(), number)),
                circuit,
                row,
                told,
                laps,
                calibrations,
                trackCelsius,
                Stream.concat(left.stream(), remarks.stream()).toList());
    }

    /** What tells a part of a file from all others: the first has the file's own digest. */
    static String digest(String file, int part) {
        return part == 0 ? file : file + "/" + part;
    }
}
