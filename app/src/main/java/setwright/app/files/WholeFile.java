package setwright.app.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;

/** Writes a file aside and renames it, so that nobody ever sees half of it. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Refuses a place where nothing can be written, before any work is done for it.
     *
     * @throws IOException when the folder is missing or closed, or the name belongs to a folder, a device or a protected file
     */
    public static void check(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null || Files.isDirectory(target)) {
            throw refused(file, "it is a folder. Name a file in it");
        }
        if (!Files.isDirectory(folder)) {
            throw refused(file, "its folder does not exist. Make it first, or name another");
        }
        if (Files.isSymbolicLink(target)) {
            // Renaming onto a link would replace the link, not the file it stands for.
            throw refused(file, "it is a link to another place. Name an ordinary file");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw refused(file, "it is a device or a pipe. Name an ordinary file");
        }
        if (!Files.isWritable(folder)) {
            throw refused(file, "its folder may not be written to. Name another folder");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw refused(file, "a file of that name is write-protected. Name another file");
        }
    }

    /**
     * Writes text as UTF-8; a file of that name is replaced.
     *
     * @throws IOException when it cannot be written; the old file is then untouched
     */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes; a file of that name is replaced.
     *
     * @throws IOException when it cannot be written; the old file is then untouched
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        check(file);
        Path target = file.toAbsolutePath();
        Path folder = Objects.requireNonNull(target.getParent(), "a file that was checked has a folder");
        String name = String.valueOf(target.getFileName());
        try {
            put(folder, name, aside -> {
                Files.write(aside, bytes);
                return name;
            });
        } catch (FileSystemException e) {
            // Its own message would name the file aside, which nobody asked for.
            throw new IOException(
                    "cannot write " + file + ": its folder takes no files"
                            + (e.getReason() == null ? "" : " (" + e.getReason() + ")") + ". Name another folder",
                    e);
        }
    }

    /** Writes a file, and says what it is to be called. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes the file.
         *
         * @return its name
         */
        String write(Path file) throws IOException;
    }

    /**
     * Writes a file into a folder, under a name that is known once it is written; one of that name is replaced.
     *
     * @throws IOException when it cannot be written; nothing is there then
     */
    public static void write(Path folder, Content content) throws IOException {
        try {
            put(folder, "incoming", content);
        } catch (FileSystemException e) {
            throw new IOException(
                    "cannot write into " + folder + (e.getReason() == null ? "" : " (" + e.getReason() + ")")
                            + ". Check that it is there, may be written to and has room",
                    e);
        }
    }

    /** Aside, to the disk, then renamed. */
    private static void put(Path folder, String name, Content content) throws IOException {
        Path aside = folder.resolve("." + name + "." + ProcessHandle.current().pid() + "."
                + Thread.currentThread().getId() + ".part");
        try {
            String known = content.write(aside);
            flush(aside);
            move(aside, folder.resolve(known));
            flush(folder);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    /** To the disk; a folder's names where the system can. */
    private static void flush(Path file) throws IOException {
        boolean folder = Files.isDirectory(file);
        try (FileChannel channel =
                FileChannel.open(file, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
            channel.force(true);
        } catch (IOException e) {
            if (!folder) {
                throw e;
            }
        }
    }

    private static IOException refused(Path file, String why) {
        return new IOException("cannot write " + file + ": " + why);
    }

    private static void move(Path aside, Path target) throws IOException {
        try {
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
