package setwright.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import setwright.intake.gather.RecordingFiles;

/** What was recorded besides in the same run. */
final class BesideOption {
    @Option(
            names = "--with",
            paramLabel = "FILE",
            description =
                    "What another device recorded in the same run (CSV, Parquet, MDF 4, GPX or NMEA 0183), or the same at another"
                            + " rate; the option once for each. Clocks are brought together by the motion that both saw.")
    private List<Path> beside = new ArrayList<>();

    /** Tells whether there is any. */
    boolean given() {
        return !beside.isEmpty();
    }

    /** Returns the files. */
    List<Path> files() {
        return List.copyOf(beside);
    }

    /** Returns the run of a main file; whether they are there shows when they are read. */
    RecordingFiles with(Path main) {
        return new RecordingFiles(main, beside);
    }
}
