package setwright.app.command;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The recording that a command reads. */
final class RecordingParameter {
    static final String WORDS = "Recorded laps: a table with a header, CSV or CSV packed with gzip.";

    @Parameters(index = "0", paramLabel = "FILE", description = WORDS)
    private Path recording;

    Path path() {
        return recording;
    }
}
