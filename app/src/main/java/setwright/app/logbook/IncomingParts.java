package setwright.app.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import setwright.core.circuit.Circuit;
import setwright.core.circuit.NotEnoughLaps;
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

/** Reads the parts of a recording and keeps their channels, before anything is entered. For one call. */
final class IncomingParts {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final String COLUMNS = ".parquet";

    private final Logbook logbook;
    private final AddRequest request;
    private final LongRecording parts;
    private final Progress progress;
    /** For each part the place of the first one, up to it, that has laps. */
    private final List<CompletableFuture<Optional<Place>>> places;

    IncomingParts(Logbook logbook, AddRequest request, LongRecording parts, Progress progress) {
        this.logbook = logbook;
        this.request = request;
        this.parts = parts;
        this.progress = progress;
        this.places = Stream.generate(CompletableFuture<Optional<Place>>::new)
                .limit(parts.count())
                .toList();
    }

    /** Where a file was driven. */
    private record Place(Circuit circuit, Optional<CircuitRow> row, Optional<String> told) {
        Place(Places.Found found) {
            this(found.stint().circuit(), found.row(), found.told());
        }
    }

    /** What came of a part: it was read, or why it is left out. */
    private record Outcome(Optional<Incoming> read, Optional<RuntimeException> left) {}

    /**
     * Reads and keeps all; a part without a lap is left out when others have some.
     *
     * @return in the order in which they were driven, at least one
     * @throws NotEnoughLaps when no part has a lap
     */
    List<Incoming> read() throws IOException {
        List<Outcome> all = outcomes();
        List<Incoming> read = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            String without = "Left out" + parts.suffix(k) + ": ";
            all.get(k).left().ifPresent(why -> left.add(without + why.getMessage()));
            if (all.get(k).read().isPresent()) {
                read.add(all.get(k).read().get().behind(left));
                left.clear();
            }
        }
        if (read.isEmpty()) {
            throw all.get(0).left().orElseThrow();
        }
        return read;
    }

    private List<Outcome> outcomes() throws IOException {
        try {
            return parts.each(this::outcome);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private Outcome outcome(int part) {
        try {
            return new Outcome(Optional.of(keep(part)), Optional.empty());
        } catch (NotEnoughLaps | InputProblem lapless) {
            places.get(part).complete(before(part));
            return new Outcome(Optional.empty(), Optional.of(lapless));
        } catch (IOException e) {
            places.get(part).completeExceptionally(e);
            throw new UncheckedIOException(e);
        } catch (RuntimeException | Error e) {
            places.get(part).completeExceptionally(e); // whoever waits for it must not wait for ever
            throw e;
        }
    }

    private Incoming keep(int part) throws IOException {
        Intake intake = parts.read(part);
        if (part == 0) {
            progress.step("laps and corners");
        }
        CompletableFuture<Places.Found> finding = Together.begin(() -> place(intake.recording(), part));
        String columns = keep(intake, finding, logbook.recordings());
        if (part == 0) {
            progress.step("writing");
        }
        Places.Found place = Together.result(finding);
        Recording recording = place.stint().recording();
        return new Incoming(
                request.files().name() + parts.suffix(part),
                columns + COLUMNS,
                columns,
                recording.sampleRateHz(),
                recording.sampleCount(),
                KeptNotes.write(ChannelNote.of(intake.proposal())),
                place.stint().circuit(),
                place.row(),
                place.told(),
                place.stint().laps(),
                recording.calibrations(),
                trackCelsius(recording),
                List.of(),
                intake.remarks());
    }

    /** Lays a part on the circuit of those before it, else finds out which it is. */
    private Places.Found place(Recording recording, int part) {
        Optional<Place> known = before(part);
        Places.Found found = known.isPresent()
                ? new Places.Found(
                        StintBuilder.build(recording, known.get().circuit()),
                        known.get().row(),
                        known.get().told())
                : Places.find(
                        recording, logbook.look(tables -> tables.circuits().lastDrivenFirst()), request.at());
        places.get(part).complete(known.or(() -> Optional.of(new Place(found))));
        return found;
    }

    /** Where the parts before one were driven; waits for them. */
    private Optional<Place> before(int part) {
        return part == 0 ? Optional.empty() : Together.result(places.get(part - 1));
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
