package setwright.app.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.ChannelNote;
import setwright.app.files.WholeFile;
import setwright.core.circuit.Circuit;
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

/** Reads the parts of a recording, two at a time, and keeps their channels, before anything is entered. For one call. */
final class IncomingParts {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final String COLUMNS = ".parquet";

    private final Logbook logbook;
    private final AddRequest request;
    private final String digest;
    private final LongRecording parts;
    private final Progress progress;
    /** Where all parts up to each were driven, as soon as it is known: on the circuit of the first that has laps. Begins before the first. */
    private final List<CompletableFuture<Optional<Ground>>> grounds = new ArrayList<>();

    IncomingParts(Logbook logbook, AddRequest request, String digest, LongRecording parts, Progress progress) {
        this.logbook = logbook;
        this.request = request;
        this.digest = digest;
        this.parts = parts;
        this.progress = progress;
        grounds.add(CompletableFuture.completedFuture(Optional.empty()));
        for (int k = 0; k < parts.count(); k++) {
            grounds.add(new CompletableFuture<>());
        }
    }

    /** A circuit, its row when the logbook has it, and its name when it was told. */
    private record Ground(Circuit circuit, Optional<CircuitRow> row, Optional<String> told) {}

    /** What came of a part: either what is to be entered, or why nothing is. */
    private record Outcome(Optional<Incoming> kept, Optional<RuntimeException> left) {}

    /**
     * Reads and keeps all; a part without a lap is left out when others have some.
     *
     * @throws NotEnoughLaps when no part has a lap
     */
    List<Incoming> read() throws IOException {
        List<Outcome> outcomes;
        try {
            outcomes = parts.each(this::part);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        List<Incoming> read = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int k = 0; k < outcomes.size(); k++) {
            Outcome one = outcomes.get(k);
            String suffix = parts.suffix(k);
            one.left().ifPresent(why -> left.add("Left out" + suffix + ": " + why.getMessage()));
            if (one.kept().isPresent()) {
                read.add(one.kept().get().numbered(read.size(), left));
                left.clear();
            }
        }
        if (read.isEmpty()) {
            throw outcomes.get(0).left().orElseThrow();
        }
        return read;
    }

    private Outcome part(int index) {
        CompletableFuture<Optional<Ground>> before = grounds.get(index);
        CompletableFuture<Optional<Ground>> since = grounds.get(index + 1);
        try {
            return new Outcome(Optional.of(keep(index, before, since)), Optional.empty());
        } catch (NotEnoughLaps | InputProblem lapless) {
            if (parts.count() == 1) {
                throw lapless;
            }
            return new Outcome(Optional.empty(), Optional.of(lapless));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            since.complete(before.join()); // does nothing where the part told it
        }
    }

    private Incoming keep(
            int index, CompletableFuture<Optional<Ground>> before, CompletableFuture<Optional<Ground>> since)
            throws IOException {
        Intake intake = parts.read(index);
        if (index == 0) {
            progress.step("laps and corners");
        }
        CompletableFuture<Places.Found> finding = Together.begin(() -> {
            Optional<Ground> known = before.join();
            Places.Found found = place(intake.recording(), known);
            since.complete(known.or(() -> Optional.of(new Ground(found.stint().circuit(), found.row(), found.told()))));
            return found;
        });
        String columnsDigest = keep(intake, finding, logbook.recordings());
        if (index == 0) {
            progress.step("writing");
        }
        Places.Found place = Together.result(finding);
        Stint stint = place.stint();
        RecordingRow row = new RecordingRow(
                0,
                request.files().name() + parts.suffix(index),
                digest,
                columnsDigest + COLUMNS,
                columnsDigest,
                intake.recording().sampleRateHz(),
                intake.recording().sampleCount(),
                KeptNotes.write(ChannelNote.of(intake.proposal())),
                String.join("\n", intake.remarks()),
                Diary.now());
        return new Incoming(
                true,
                row,
                stint.circuit(),
                place.row(),
                place.told(),
                stint.laps(),
                stint.recording().calibrations(),
                trackCelsius(stint.recording()),
                intake.remarks());
    }

    private Places.Found place(Recording recording, Optional<Ground> known) {
        if (known.isEmpty()) {
            List<CircuitRow> circuits = logbook.look(tables -> tables.circuits().lastDrivenFirst());
            return Places.find(recording, circuits, request.at());
        }
        Ground ground = known.get();
        return new Places.Found(StintBuilder.build(recording, ground.circuit()), ground.row(), ground.told());
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
