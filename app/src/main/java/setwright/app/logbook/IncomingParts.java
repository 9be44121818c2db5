package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.ChannelNote;
import setwright.app.files.WholeFile;
import setwright.core.circuit.NotEnoughLaps;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.Intake;
import setwright.intake.LongRecording;
import setwright.intake.columns.RecordingColumns;
import setwright.intake.problem.InputProblem;
import setwright.logbook.Logbook;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.RecordingRow;

/** Reads the parts of a recording one after the other and keeps their channels, before anything is entered. Mutable; for one call. */
final class IncomingParts {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final String COLUMNS = ".parquet";

    private final Logbook logbook;
    private final AddRequest request;
    private final String digest;
    private final List<Incoming> read = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    IncomingParts(Logbook logbook, AddRequest request, String digest) {
        this.logbook = logbook;
        this.request = request;
        this.digest = digest;
    }

    /**
     * Reads and keeps all; a part without a lap is left out when others have some.
     *
     * @throws NotEnoughLaps when no part has a lap
     */
    List<Incoming> read(LongRecording parts, Progress progress) throws IOException {
        Optional<RuntimeException> why = Optional.empty();
        CompletableFuture<Intake> coming = Together.begin(() -> parts.read(0));
        for (int k = 0; k < parts.count(); k++) {
            CompletableFuture<Intake> here = coming;
            int following = k + 1;
            if (following < parts.count()) { // read while this one is worked on: two are in memory at a time
                coming = Together.then(here, () -> parts.read(following));
            }
            try {
                keep(Together.result(here), parts.suffix(k), progress);
            } catch (NotEnoughLaps | InputProblem lapless) {
                if (parts.count() == 1) {
                    throw lapless;
                }
                left.add("Left out" + parts.suffix(k) + ": " + lapless.getMessage());
                why = why.or(() -> Optional.of(lapless));
            }
        }
        if (read.isEmpty()) {
            throw why.orElseThrow();
        }
        return read;
    }

    private void keep(Intake intake, String suffix, Progress progress) throws IOException {
        if (read.isEmpty()) {
            progress.step("laps and corners");
        }
        CompletableFuture<Places.Found> finding = Together.begin(() -> place(intake.recording()));
        String columnsDigest = keep(intake, finding, logbook.recordings());
        if (read.isEmpty()) {
            progress.step("writing");
        }
        Places.Found place = Together.result(finding);
        Stint stint = place.stint();
        RecordingRow row = new RecordingRow(
                0,
                request.files().name() + suffix,
                Incoming.digest(digest, read.size()),
                columnsDigest + COLUMNS,
                columnsDigest,
                intake.recording().sampleRateHz(),
                intake.recording().sampleCount(),
                KeptNotes.write(ChannelNote.of(intake.proposal())),
                String.join("\n", intake.remarks()),
                Diary.now());
        read.add(new Incoming(
                read.isEmpty(),
                row,
                stint.circuit(),
                place.row(),
                place.told(),
                stint.laps(),
                stint.recording().calibrations(),
                trackCelsius(stint.recording()),
                Stream.concat(left.stream(), intake.remarks().stream()).toList()));
        left.clear();
    }

    /** All parts of a file were driven on the circuit of the first. */
    private Places.Found place(Recording recording) {
        if (read.isEmpty()) {
            List<CircuitRow> circuits = logbook.look(tables -> tables.circuits().lastDrivenFirst());
            return Places.find(recording, circuits, request.at());
        }
        Incoming first = read.get(0);
        return new Places.Found(StintBuilder.build(recording, first.circuit()), first.row(), first.told());
    }

    /**
     * Named by what it holds: two that add one recording differently do not write over each other. Nothing is kept when no laps are
     * found, which is looked for meanwhile. Returns its digest.
     */
    private static String keep(Intake intake, CompletableFuture<Places.Found> finding, Path folder) throws IOException {
        String[] digest = new String[1];
        WholeFile.write(folder, aside -> {
            RecordingColumns.write(aside, intake.recording());
            digest[0] = Digest.of(aside);
            Together.result(finding);
            return digest[0] + COLUMNS;
        });
        return digest[0];
    }

    /** As people say, else as recorded, to a tenth. */
    private OptionalDouble trackCelsius(Recording recording) {
        OptionalDouble told = request.trackCelsius();
        if (told.isPresent() || !recording.has(Quantity.TRACK_TEMPERATURE)) {
            return told;
        }
        double kelvin =
                Robust.median(recording.channel(Quantity.TRACK_TEMPERATURE).toArray());
        return Double.isFinite(kelvin)
                ? OptionalDouble.of(Math.rint(10.0 * (kelvin - ZERO_CELSIUS_K)) / 10.0)
                : OptionalDouble.empty();
    }
}
