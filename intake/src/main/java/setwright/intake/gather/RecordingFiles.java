package setwright.intake.gather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The files of one run.
 *
 * @param main    the recording of the car
 * @param beside  what other devices, or the same at another rate, recorded of the same run
 */
public record RecordingFiles(Path main, List<Path> beside) {
    public RecordingFiles {
        beside = List.copyOf(beside);
    }

    /** Returns a run of which there is one file. */
    public static RecordingFiles of(Path file) {
        return new RecordingFiles(file, List.of());
    }

    /** Returns all of them, the main one first. */
    public List<Path> all() {
        List<Path> all = new ArrayList<>();
        all.add(main);
        all.addAll(beside);
        return all;
    }

    /** Returns what people call the run: the name of the main file. */
    public String name() {
        return String.valueOf(main.getFileName());
    }
}
