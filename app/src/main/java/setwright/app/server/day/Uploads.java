package setwright.app.server.day;

import io.javalin.http.ContentTooLargeResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Files that the browser sent, each in a folder of its own until it was read; gone with the server. */
public final class Uploads implements AutoCloseable {
    private static final int LONGEST_NAME = 80;
    private static final int BUFFER = 1 << 16;

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
        String key = UUID.randomUUID().toString();
        Path own = Files.createDirectory(folder.resolve(key));
        Path file = own.resolve(harmless(name));
        try {
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

    /** Letters, digits, space, dot, dash and underline; no folder, nothing hidden. */
    static String harmless(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String kept = last.replaceAll("[^\\p{L}\\p{N} ._-]", "_").replaceAll("^[. ]+", "");
        String ending =
                kept.contains(".") ? kept.substring(kept.lastIndexOf('.')).toLowerCase(Locale.ROOT) : "";
        return kept.isBlank()
                ? "recording.csv"
                : kept.length() <= LONGEST_NAME
                        ? kept
                        : kept.substring(0, LONGEST_NAME - Math.min(ending.length(), 10))
                                + ending.substring(0, Math.min(ending.length(), 10));
    }

    private static void delete(Path place) {
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
