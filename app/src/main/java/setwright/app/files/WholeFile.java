package setwright.app.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file aside and renames it, so that nobody ever sees half of it. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes text as UTF-8; a file of that name is replaced.
     *
     * @throws IOException when the folder is missing or may not be written to; the old file is then untouched
     */
    public static void write(Path file, String text) throws IOException {
        Path target = file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(target)) {
            throw new IOException("cannot write " + file + ": "
                    + (Files.isDirectory(target) ? "it is a folder" : "its folder does not exist"));
        }
        Path aside = folder.resolve(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.writeString(aside, text, StandardCharsets.UTF_8);
            try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            move(aside, target);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private static void move(Path aside, Path target) throws IOException {
        try {
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
