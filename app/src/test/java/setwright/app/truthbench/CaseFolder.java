package setwright.app.truthbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the files of a case lie.
 *
 * @param path  of it
 * @param kept  whether they stay when it is closed
 */
record CaseFolder(Path path, boolean kept) implements AutoCloseable {
    /**
     * Returns that of a case.
     *
     * @param keep  where files stay; empty for a folder that is gone when closed
     */
    static CaseFolder of(BenchCase drawn, Optional<Path> keep) throws IOException {
        return keep.isPresent()
                ? new CaseFolder(
                        Files.createDirectories(keep.get().resolve(String.format("case-%03d", drawn.number()))), true)
                : new CaseFolder(Files.createTempDirectory("truthbench"), false);
    }

    @Override
    public void close() throws IOException {
        if (kept) {
            return;
        }
        try (Stream<Path> files = Files.walk(path)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
