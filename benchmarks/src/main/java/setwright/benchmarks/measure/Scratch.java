package setwright.benchmarks.measure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * A folder for files that are gone afterwards.
 *
 * @param folder  itself
 */
public record Scratch(Path folder) implements AutoCloseable {
    /** Makes one where the system keeps such files. */
    public static Scratch make() throws IOException {
        return new Scratch(Files.createTempDirectory("setwright-benchmark"));
    }

    @Override
    public void close() throws IOException {
        remove(folder);
    }

    /** Removes a folder with all that is in it. */
    public static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
