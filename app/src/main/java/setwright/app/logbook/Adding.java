package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.app.circuit.CircuitFile;
import setwright.app.diagnose.Progress;
import setwright.app.logbook.Diary.Kind;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.circuit.Lap;
import setwright.intake.LongRecording;
import setwright.intake.map.ChannelMapFile;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.DriverRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/** Reads recordings into a logbook. */
public final class Adding {
    /** How many steps are told to the progress. */
    public static final int STEPS = 3;

    private static final String NOBODY = "unnamed driver";

    private final Logbook logbook;

    /** Makes one for a logbook. */
    public Adding(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * Reads a recording, unless the same file was read before. Either all of it is kept or nothing. What lasts longer than a stint becomes
     * several.
     *
     * @return the stints, in the order in which they were driven, at least one
     * @throws IOException when a file cannot be read or written
     */
    public List<Added> add(AddRequest request, Progress progress) throws IOException {
        for (Path file : request.files().all()) {
            if (!Files.exists(file)) {
                throw new NoSuchFileException(file.toString());
            }
        }
        progress.step("recording");
        String digest = Digest.of(request.files().all());
        List<Added> known = logbook.look(tables -> known(tables, digest));
        if (!known.isEmpty()) {
            return known;
        }
        DrivenCar car = DrivenCar.of(logbook, request.sheet(), request.car(), request.setup(), request.name());
        LongRecording parts =
                LongRecording.open(request.files(), request.map().map(ChannelMapFile::read), Optional.of(car.sheet()));
        List<Incoming> incoming = new IncomingParts(logbook, request, digest, parts, progress).read();
        return logbook.with(tables -> {
            List<Added> meanwhile = known(tables, digest);
            return meanwhile.isEmpty() ? enter(tables, request, car, incoming) : meanwhile;
        });
    }

    private static List<Added> known(Tables tables, String digest) {
        List<Added> known = new ArrayList<>();
        Optional<StintRow> stint = stint(tables, Incoming.digest(digest, 0));
        while (stint.isPresent()) {
            known.add(new Added(
                    KeptStint.of(tables, stint.get()), true, Optional.empty(), false, List.of(), List.of(), List.of()));
            stint = stint(tables, Incoming.digest(digest, known.size()));
        }
        return known;
    }

    private static Optional<StintRow> stint(Tables tables, String digest) {
        return tables.recordings().from(digest).flatMap(row -> tables.stints().ofRecording(row.id()));
    }

    private static List<Added> enter(Tables tables, AddRequest request, DrivenCar driven, List<Incoming> incoming) {
        List<Added> added = new ArrayList<>();
        Optional<CircuitRow> begun = Optional.empty();
        for (Incoming one : incoming) {
            CircuitRow circuit = begun.or(one::row).orElseGet(() -> circuit(tables, one));
            begun = Optional.of(circuit);
            added.add(enter(tables, request, driven, one, circuit, one.row().isEmpty() && added.isEmpty()));
        }
        return added;
    }

    private static Added enter(
            Tables tables, AddRequest request, DrivenCar driven, Incoming incoming, CircuitRow circuit, boolean isNew) {
        Setups setups = new Setups(tables);
        CarRow car = setups.car(driven.name());
        SetupStep setup = driven(setups, car, driven);
        DriverRow driver = driver(tables, request.driver());
        long recording = tables.recordings().add(incoming.recording());
        List<Lap> good = incoming.laps().stream().filter(Lap::good).toList();
        OptionalDouble best = good.stream().mapToDouble(Lap::timeS).min();
        long stint = tables.stints()
                .add(new StintRow(
                        0,
                        recording,
                        car.id(),
                        setup.setup().id(),
                        driver.id(),
                        circuit.id(),
                        incoming.laps().size(),
                        good.size(),
                        best,
                        good.stream().mapToDouble(Lap::timeS).average(),
                        incoming.first() ? request.tyreAgeLaps() : OptionalInt.empty(),
                        incoming.trackCelsius(),
                        incoming.first() ? request.fuelStartKg() : OptionalDouble.empty(),
                        false,
                        incoming.recording().addedAt()));
        KeptStint kept = KeptStint.of(tables, tables.stints().find(stint).orElseThrow());
        Diary.write(tables, Kind.STINT, car.id(), Optional.of(stint), words(kept));
        return new Added(
                kept, false, Optional.of(setup), isNew, incoming.laps(), incoming.calibrations(), incoming.remarks());
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

    private static CircuitRow circuit(Tables tables, Incoming place) {
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
                                CircuitFile.text(place.circuit()),
                                place.circuit().line().lengthM(),
                                Diary.now())));
    }
}
