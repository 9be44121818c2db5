package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.circuit.CircuitFile;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.ChannelNote;
import setwright.app.files.WholeFile;
import setwright.app.logbook.Diary.Kind;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.circuit.Lap;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;
import setwright.intake.columns.RecordingColumns;
import setwright.intake.map.ChannelMapFile;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.DriverRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/** Reads recordings into a logbook. */
public final class Adding {
    private static final double ZERO_CELSIUS_K = 273.15;
    /** How many steps are told to the progress. */
    public static final int STEPS = 3;

    private static final String NOBODY = "unnamed driver";
    private static final String COLUMNS = ".parquet";

    private final Logbook logbook;

    /** Makes one for a logbook. */
    public Adding(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * Reads a recording, unless the same file was read before. Either all of it is kept or nothing.
     *
     * @throws IOException when a file cannot be read or written
     */
    public Added add(AddRequest request, Progress progress) throws IOException {
        for (Path file : request.files().all()) {
            if (!Files.exists(file)) {
                throw new NoSuchFileException(file.toString());
            }
        }
        progress.step("recording");
        String digest = Digest.of(request.files().all());
        Optional<Added> known = logbook.look(tables -> known(tables, digest));
        if (known.isPresent()) {
            return known.get();
        }
        DrivenCar car = DrivenCar.of(logbook, request.sheet(), request.car(), request.setup(), request.name());
        Intake intake = RecordingReader.read(
                request.files(), request.map().map(ChannelMapFile::read), Optional.of(car.sheet()));
        progress.step("laps and corners");
        List<CircuitRow> circuits = logbook.look(tables -> tables.circuits().lastDrivenFirst());
        Places.Found place = Places.find(intake.recording(), circuits, request.at());
        progress.step("writing");
        String columnsDigest = keep(intake, logbook.recordings());
        RecordingRow recording = new RecordingRow(
                0,
                request.files().name(),
                digest,
                columnsDigest + COLUMNS,
                columnsDigest,
                intake.recording().sampleRateHz(),
                intake.recording().sampleCount(),
                KeptNotes.write(ChannelNote.of(intake.proposal())),
                String.join("\n", intake.remarks()),
                Diary.now());
        return logbook.with(tables -> known(tables, digest)
                .orElseGet(() -> enter(tables, new Incoming(request, car, intake, place, recording))));
    }

    private static Optional<Added> known(Tables tables, String digest) {
        return tables.recordings()
                .from(digest)
                .flatMap(row -> tables.stints().ofRecording(row.id()))
                .map(stint -> new Added(
                        KeptStint.of(tables, stint), true, Optional.empty(), false, List.of(), List.of(), List.of()));
    }

    /** Named by what it holds: two that add one recording differently do not write over each other. Returns its digest. */
    private static String keep(Intake intake, Path folder) throws IOException {
        String[] digest = new String[1];
        WholeFile.write(folder, aside -> {
            RecordingColumns.write(aside, intake.recording());
            digest[0] = Digest.of(aside);
            return digest[0] + COLUMNS;
        });
        return digest[0];
    }

    private record Incoming(
            AddRequest request, DrivenCar car, Intake intake, Places.Found place, RecordingRow recording) {}

    private static Added enter(Tables tables, Incoming incoming) {
        Setups setups = new Setups(tables);
        CarRow car = setups.car(incoming.car().name());
        SetupStep setup = driven(setups, car, incoming.car());
        DriverRow driver = driver(tables, incoming.request().driver());
        CircuitRow circuit = circuit(tables, incoming.place());
        long recording = tables.recordings().add(incoming.recording());
        List<Lap> good = incoming.place().stint().goodLaps();
        OptionalDouble best = good.stream().mapToDouble(Lap::timeS).min();
        long stint = tables.stints()
                .add(new StintRow(
                        0,
                        recording,
                        car.id(),
                        setup.setup().id(),
                        driver.id(),
                        circuit.id(),
                        incoming.place().stint().laps().size(),
                        good.size(),
                        best,
                        good.stream().mapToDouble(Lap::timeS).average(),
                        incoming.request().tyreAgeLaps(),
                        trackCelsius(incoming),
                        incoming.request().fuelStartKg(),
                        incoming.recording().addedAt()));
        KeptStint kept = KeptStint.of(tables, tables.stints().find(stint).orElseThrow());
        Diary.write(tables, Kind.STINT, car.id(), Optional.of(stint), words(kept));
        return new Added(
                kept,
                false,
                Optional.of(setup),
                incoming.place().row().isEmpty(),
                incoming.place().stint().laps(),
                incoming.place().stint().recording().calibrations(),
                incoming.intake().remarks());
    }

    /** As people say, else as recorded, to a tenth. */
    private static OptionalDouble trackCelsius(Incoming incoming) {
        OptionalDouble told = incoming.request().trackCelsius();
        Recording recording = incoming.place().stint().recording();
        if (told.isPresent() || !recording.has(Quantity.TRACK_TEMPERATURE)) {
            return told;
        }
        double kelvin =
                Robust.median(recording.channel(Quantity.TRACK_TEMPERATURE).toArray());
        return Double.isFinite(kelvin)
                ? OptionalDouble.of(Math.rint(10.0 * (kelvin - ZERO_CELSIUS_K)) / 10.0)
                : OptionalDouble.empty();
    }

    private static String words(KeptStint stint) {
        Figures figures = Figures.forTerminal(UnitSystem.METRIC);
        return String.format(
                        Locale.ROOT,
                        "%s from %s: %s in %s with setup %d at %s, %d laps to be judged of %d",
                        Figures.capital(stint.name()),
                        stint.recording().name(),
                        stint.driver().name(),
                        stint.car().name(),
                        stint.setup().number(),
                        stint.circuit().name(),
                        stint.stint().goodLaps(),
                        stint.stint().laps())
                + (stint.stint().bestS().isPresent()
                        ? ", best " + figures.lapTime(stint.stint().bestS().getAsDouble())
                        : "")
                + ".";
    }

    private static DriverRow driver(Tables tables, Optional<String> name) {
        Optional<DriverRow> last =
                tables.stints().last().map(stint -> tables.drivers().get(stint.driverId()));
        String wanted = name.or(() -> last.map(DriverRow::name)).orElse(NOBODY);
        return tables.drivers().knownOrNew(wanted);
    }

    /** What was driven is noted; only a setup that nobody has seen before is also put onto the car: the car may have moved on since. */
    private static SetupStep driven(Setups setups, CarRow car, DrivenCar driven) {
        Optional<SetupRow> version = driven.version().or(() -> setups.version(car, driven.text()));
        return version.isPresent() && setups.fittedIfAny(car).isPresent()
                ? new SetupStep(car, version.get(), false, false, "")
                : setups.fit(car, driven.text(), "", "");
    }

    private static CircuitRow circuit(Tables tables, Places.Found place) {
        if (place.row().isPresent()) {
            return place.row().get();
        }
        if (place.told()
                .filter(name -> tables.circuits().named(name).isPresent())
                .isPresent()) {
            throw new LogbookProblem("a circuit of the name " + place.told().get()
                    + " came into the logbook meanwhile. Give the command once more.");
        }
        int number = 1;
        while (tables.circuits().named("circuit " + number).isPresent()) {
            number++;
        }
        return tables.circuits()
                .get(tables.circuits()
                        .add(new CircuitRow(
                                0,
                                place.told().orElse("circuit " + number),
                                CircuitFile.text(place.stint().circuit()),
                                place.stint().circuit().line().lengthM(),
                                Diary.now())));
    }
}
