package setwright.app.command;

import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import setwright.intake.gather.RecordingFiles;

/** The recording that a command reads. */
final class RecordingParameter {
    static final String WORDS = "Recorded laps: CSV (also packed with gzip), Parquet or MDF 4.";

    @Parameters(index = "0", paramLabel = "FILE", description = WORDS)
    private Path recording;

    @Mixin
    private BesideOption beside;

    /**
     * Returns the files of the run.
     *
     * @throws NoSuchFileException when one of them is not there
     */
    RecordingFiles files() throws NoSuchFileException {
        RecordingFiles files = beside.with(recording);
        for (Path file : files.all()) {
            InputFiles.existing(file);
        }
        return files;
    }
}
