package setwright.fleet.depot;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of this machine that goes when it is closed, with all that is in it.
 *
 * @param path  of it
 */
public record TemporaryFolder(Path path) implements AutoCloseable {
    /**
     * Makes one.
     *
     * @param name  with which its own begins
     */
    public static TemporaryFolder make(String name) throws IOException {
        return new TemporaryFolder(Files.createTempDirectory(name));
    }

    @Override
    public void close() throws IOException {
        List<Path> all;
        try (Stream<Path> walked = Files.walk(path)) {
            all = walked.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : all) {
            Files.deleteIfExists(one);
        }
    }
}
