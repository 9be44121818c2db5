package setwright.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import setwright.app.diagnose.BaselineFile;

/** Laps of the same car in good order. */
final class BaselineOption {
    private static final String NONE = "none";

    @Option(
            names = "--baseline",
            paramLabel = "FILE|STINT|none",
            description =
                    "Laps of the same car on the same circuit when it was in good order: the balance is held against them"
                            + " instead of a reckoned car. A recording for a recording, a stint for a stint of the logbook; without it a"
                            + " stint is held against the last one that amend --good-order named, unless this says none.")
    private Optional<String> laps = Optional.empty();

    @Option(
            names = "--baseline-car",
            paramLabel = "SHEET",
            description = "Car sheet that a recording given as baseline was driven with. Without it, that of --car.")
    private Optional<Path> car = Optional.empty();

    /** Tells whether somebody wants no baseline, although the logbook has one. */
    boolean unwanted() {
        return laps.filter(NONE::equals).isPresent();
    }

    private Optional<String> named() {
        return laps.filter(text -> !text.equals(NONE));
    }

    /** Returns the recording. */
    Optional<BaselineFile> file() {
        if (named().isEmpty() && car.isPresent()) {
            throw new BadOption("--baseline-car says with which sheet --baseline was driven: name those laps, too.");
        }
        if (named().isPresent() && LapChoice.namesStint(laps)) {
            throw new BadOption("a recording is held against a recording: name a file as --baseline, or add both to a"
                    + " logbook and name stints.");
        }
        return named().map(text -> new BaselineFile(Path.of(text), car));
    }

    /** Returns the number of a stint. */
    Optional<Long> stint() {
        if (car.isPresent()) {
            throw new BadOption("a stint of the logbook has its setup already: leave out --baseline-car.");
        }
        if (named().isPresent() && !LapChoice.namesStint(laps)) {
            throw new BadOption(
                    "a stint of the logbook is held against another stint: name its number as --baseline, or a"
                            + " recording as the laps.");
        }
        return named().map(Long::valueOf);
    }

    /** Returns the files that are read. */
    List<Optional<Path>> inputs() {
        return LapChoice.namesStint(laps) ? List.of(car) : List.of(named().map(Path::of), car);
    }
}
