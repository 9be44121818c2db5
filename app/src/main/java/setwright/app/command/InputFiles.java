package setwright.app.command;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Files that a call reads. */
final class InputFiles {
    private InputFiles() {}

    /**
     * Returns a file that is there.
     *
     * @throws NoSuchFileException when it is not
     */
    static Path existing(Path file) throws NoSuchFileException {
        if (!Files.exists(file)) {
            throw new NoSuchFileException(file.toString());
        }
        return file;
    }
}
