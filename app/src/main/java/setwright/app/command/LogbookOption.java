package setwright.app.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import setwright.app.logbook.LogbookPlace;

/** The logbook that a command works with. */
final class LogbookOption {
    @Option(
            names = "--logbook",
            paramLabel = "PLACE",
            defaultValue = "${env:SETWRIGHT_LOGBOOK:-setwright-logbook}",
            description = "The logbook: a folder, or postgres://user@host:port/name for a team. Without it that of"
                    + " SETWRIGHT_LOGBOOK, else setwright-logbook in this folder.")
    private String place;

    @Option(
            names = "--recordings",
            paramLabel = "FOLDER",
            defaultValue = "${env:SETWRIGHT_RECORDINGS}",
            description =
                    "Where the channels of recordings lie, for a team's logbook; else that of SETWRIGHT_RECORDINGS.")
    private Optional<Path> recordings = Optional.empty();

    LogbookPlace place() {
        return new LogbookPlace(place, recordings);
    }
}
