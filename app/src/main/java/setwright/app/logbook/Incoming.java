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
 * @param name           of the recording, with its part
 * @param file           that holds the channels
 * @param fileDigest     of that file
 * @param rateHz         samples per second
 * @param samples        how many
 * @param channels       what was understood of the columns, as kept
 * @param circuit        that it was laid on
 * @param row            of the circuit, when the logbook has it
 * @param told           name of the circuit, when it was told
 * @param laps           as they were cut
 * @param calibrations   what was corrected
 * @param trackCelsius   temperature of the track, degC
 * @param left           which parts before it were left out, and why
 * @param remarks        what was understood
 */
record Incoming(
        String name,
        String file,
        String fileDigest,
        double rateHz,
        long samples,
        String channels,
        Circuit circuit,
        Optional<CircuitRow> row,
        Optional<String> told,
        List<Lap> laps,
        List<Calibration> calibrations,
        OptionalDouble trackCelsius,
        List<String> left,
        List<String> remarks) {

    /** Returns it with what was left out before it. */
    Incoming behind(List<String> leftOut) {
        return new Incoming(
                name,
                file,
                fileDigest,
                rateHz,
                samples,
                channels,
                circuit,
                row,
                told,
                laps,
                calibrations,
                trackCelsius,
                List.copyOf(leftOut),
                remarks);
    }

    /**
     * Returns its recording as it is entered.
     *
     * @param source  digest of the files that it came from
     * @param stint   which one of theirs, counted from 0
     */
    RecordingRow recording(String source, int stint) {
        return new RecordingRow(
                0,
                name,
                digest(source, stint),
                file,
                fileDigest,
                rateHz,
                samples,
                channels,
                String.join("\n", remarks),
                Diary.now());
    }

    /** Returns what to tell whoever added it. */
    List<String> words() {
        return Stream.concat(left.stream(), remarks.stream()).toList();
    }

    /** What tells a stint of a file from all others: the first has the file's own digest. */
    static String digest(String source, int stint) {
        return stint == 0 ? source : source + "/" + stint;
    }
}
