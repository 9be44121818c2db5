package setwright.app.scoreboard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A case on disk.
 *
 * @param name    of its folder
 * @param folder  where it is
 * @param truth   its truth
 */
record PracticeCase(String name, Path folder, Truth truth) {
    private static final String TRUTH_FILE = "truth.json";

    /**
     * Returns the cases of a folder in the order of their names.
     *
     * @throws IllegalArgumentException when there is none
     */
    static List<PracticeCase> in(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            List<PracticeCase> cases = entries.filter(entry -> Files.exists(entry.resolve(TRUTH_FILE)))
                    .sorted()
                    .map(entry -> new PracticeCase(
                            String.valueOf(entry.getFileName()), entry, Truth.read(entry.resolve(TRUTH_FILE))))
                    .toList();
            if (cases.isEmpty()) {
                throw new IllegalArgumentException(
                        folder + " holds no case: folders with recordings, a car sheet and a " + TRUTH_FILE);
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path recording(Truth.Stint stint) {
        return folder.resolve(stint.file());
    }

    /** Returns the sheet for a stint: its own, {@code car_stint2.yaml} for {@code stint2.csv.gz}, else the case's. */
    Path carSheet(Truth.Stint stint) {
        String stem = stint.file().replaceFirst("\\..*$", "");
        Path own = folder.resolve("car_" + stem + ".yaml");
        return Files.exists(own) ? own : folder.resolve("car.yaml");
    }
}
