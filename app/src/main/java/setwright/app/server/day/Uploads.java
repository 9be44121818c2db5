package setwright.app.server.day;

import io.javalin.http.ContentTooLargeResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Files that the browser sent, each in a folder of its own until it was read; gone with the server. */
public final class Uploads implements AutoCloseable {
    private static final int LONGEST_NAME = 80;
    private static final int ENDING = 12;
    private static final int BUFFER = 1 << 16;
    private static final int MOST_FILES = 200;

    private final Path folder;
    private final long mostBytes;
    private final Map<String, Path> files = new ConcurrentHashMap<>();

    /**
     * Makes an empty place for them.
     *
     * @param mostBytes  of a single file
     */
    public Uploads(long mostBytes) {
        this.mostBytes = mostBytes;
        try {
            this.folder = Files.createTempDirectory("setwright-page");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Takes a file as it comes in, never more of it in memory than a buffer.
     *
     * @param name     that the browser gives it; only what is harmless in a file's name is kept
     * @param content  read to its end
     * @return what it is asked for by later
     * @throws ContentTooLargeResponse when it is too long; nothing is kept then
     */
    public String take(String name, InputStream content) throws IOException {
        if (files.size() >= MOST_FILES) {
            throw new ContentTooLargeResponse("Too many files wait to be read in. Read in those that were sent first.");
        }
        String key = UUID.randomUUID().toString();
        Path own = Files.createDirectory(folder.resolve(key));
        Path file;
        try {
            file = own.resolve(harmless(name));
            copy(content, file);
        } catch (IOException | RuntimeException e) {
            delete(own);
            throw e;
        }
        files.put(key, file);
        return key;
    }

    private void copy(InputStream content, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            byte[] buffer = new byte[BUFFER];
            long sum = 0;
            for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
                sum += read;
                if (sum > mostBytes) {
                    throw new ContentTooLargeResponse("The file is longer than " + mostBytes / (1 << 20)
                            + " MB. Read it in on the command line: setwright add FILE.");
                }
                out.write(buffer, 0, read);
            }
        }
    }

    /** Returns a file that was taken. */
    public Optional<Path> file(String key) {
        return Optional.ofNullable(files.get(key));
    }

    /** Throws a file away. */
    public void drop(String key) {
        Optional.ofNullable(files.remove(key)).map(Path::getParent).ifPresent(Uploads::delete);
    }

    @Override
    public void close() {
        delete(folder);
    }

    /** Letters, digits, space, dot, dash and underline, as far as this machine can write them; no folder, nothing hidden. */
    static String harmless(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String kept = cut(last.replaceAll("[^\\p{L}\\p{N} ._-]", "_").replaceAll("^[. ]+", ""));
        if (kept.isBlank()) {
            return "recording.csv";
        }
        try {
            return Path.of(kept).toString();
        } catch (InvalidPathException e) {
            return kept.replaceAll("[^A-Za-z0-9 ._-]", "_");
        }
    }

    /** A long name loses its middle: its ending tells what the file is. */
    private static String cut(String name) {
        int[] letters = name.codePoints().toArray();
        if (letters.length <= LONGEST_NAME) {
            return name;
        }
        return new String(letters, 0, LONGEST_NAME - ENDING) + new String(letters, letters.length - ENDING, ENDING);
    }

    private static void delete(Path place) {
        if (!Files.exists(place)) {
            return;
        }
        try (Stream<Path> all = Files.walk(place)) {
            all.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.deleteIfExists(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
