package setwright.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.FileLaps;
import setwright.app.diagnose.LapSource;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.intake.gather.RecordingFiles;
import setwright.logbook.Logbook;

/** Which laps a call is about: a file with its companions, or a stint of the logbook. */
final class LapChoice {
    static final String WORDS =
            "Recorded laps: CSV (also packed with gzip), Parquet or MDF 4; or the number of a stint in the logbook;"
                    + " without either its last stint.";

    @Mixin
    private CarOption car;

    @Mixin
    private ReadingOptions reading;

    @Mixin
    private BesideOption beside;

    @Mixin
    private BaselineOption baseline;

    @Mixin
    private LogbookOption logbook;

    CarOption car() {
        return car;
    }

    ReadingOptions reading() {
        return reading;
    }

    BaselineOption baseline() {
        return baseline;
    }

    LogbookOption logbook() {
        return logbook;
    }

    /** Returns the files that a call reads. */
    List<Optional<Path>> inputs(Optional<String> text) {
        return namesStint(text)
                ? List.of()
                : Stream.of(
                                Stream.of(text.map(Path::of), car.path(), reading.map(), reading.circuit()),
                                baseline.inputs().stream(),
                                beside.files().stream().map(Optional::of))
                        .flatMap(files -> files)
                        .toList();
    }

    /** Returns the recordings that are named, each with what was recorded beside it. */
    List<RecordingFiles> recordings(List<String> named) {
        if (named.size() > 1 && beside.given()) {
            throw new BadOption(
                    "with several recordings nothing tells to which of them --with belongs: add each of them to a logbook"
                            + " with its own (setwright add), and name the stints.");
        }
        return named.stream().map(Path::of).map(beside::with).toList();
    }

    /** Tells whether a text names a stint rather than a file. */
    static boolean namesStint(Optional<String> text) {
        return text.isEmpty() || (text.get().matches("[0-9]{1,18}") && !Files.exists(Path.of(text.get())));
    }

    /**
     * Returns the laps.
     *
     * @param text    a file or the number of a stint; empty for the last stint
     * @param whyCar  what a file's car sheet is needed for; empty when it is not
     */
    LapSource laps(
            CommandSpec spec, Optional<String> text, Diagnoser diagnoser, DeskOpener desk, Optional<String> whyCar) {
        if (namesStint(text)) {
            return kept(text, desk.open(openLogbook()));
        }
        whyCar.ifPresent(why -> car.required(spec, why));
        return new FileLaps(
                diagnoser,
                DiagnoseRequest.of(
                                beside.with(Path.of(text.orElseThrow())), car.path(), reading.map(), reading.circuit())
                        .against(baseline.file()));
    }

    /** Opens the logbook that the call's stints are in. */
    Logbook openLogbook() {
        if (car.path().isPresent()
                || reading.map().isPresent()
                || reading.circuit().isPresent()
                || beside.given()) {
            throw new BadOption(
                    "a stint of the logbook has its car, map, circuit and files already: leave out --car, --map,"
                            + " --circuit and --with, or name a recording.");
        }
        return logbook.place().open();
    }

    /** Returns a stint of a logbook that is open; the last one without a number. */
    KeptLaps kept(Optional<String> number, StintDesk desk) {
        Optional<Long> stint = number.map(Long::valueOf);
        if (baseline.unwanted()) {
            return desk.alone(stint);
        }
        return baseline.stint().map(good -> desk.laps(stint, good)).orElseGet(() -> desk.laps(stint));
    }
}
