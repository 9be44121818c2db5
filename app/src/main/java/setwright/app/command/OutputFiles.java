package setwright.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.app.files.WholeFile;

/** Looks at where a call wants its files before any work is done, so that none of them costs a recording. */
final class OutputFiles {
    private OutputFiles() {}

    /**
     * Refuses outputs that cannot be written, that are read by the same call, or that are named twice.
     *
     * @param inputs   files that are read
     * @param outputs  the file each option writes
     * @throws IOException naming the option and what to do
     */
    static void check(List<Optional<Path>> inputs, Map<String, Optional<Path>> outputs) throws IOException {
        for (Map.Entry<String, Optional<Path>> output : outputs.entrySet()) {
            if (output.getValue().isEmpty()) {
                continue;
            }
            Path file = output.getValue().get();
            for (Optional<Path> input : inputs) {
                if (input.isPresent() && same(input.get(), file)) {
                    throw new IOException(output.getKey() + " would overwrite " + file
                            + ", which this call reads. Name another file for it");
                }
            }
            for (Map.Entry<String, Optional<Path>> other : outputs.entrySet()) {
                if (!other.getKey().equals(output.getKey())
                        && other.getValue().isPresent()
                        && same(other.getValue().get(), file)) {
                    throw new IOException(output.getKey() + " and " + other.getKey() + " both name " + file
                            + ". Name a file for each");
                }
            }
            WholeFile.check(file);
        }
    }

    private static boolean same(Path one, Path other) throws IOException {
        boolean sameName =
                one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
        return sameName || (Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other));
    }
}
