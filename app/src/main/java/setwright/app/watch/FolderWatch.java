package setwright.app.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Finds the files that came into a folder and are complete.
 *
 * <p>It looks whenever it is asked, since folders on other machines do not report what happens in them. A file is taken for complete when neither its
 * size nor its time has changed for a while; one that goes on changing later is given again. What lay there before is left alone, unless it
 * changes.
 */
public final class FolderWatch {
    /** Loggers write at least once a second; three in a row missed, and the file is closed. Our own choice. */
    public static final Duration USUAL_REST = Duration.ofSeconds(3);

    private static final List<String> UNFINISHED =
            List.of(".part", ".tmp", ".crdownload", ".download", ".filepart", "~");

    private final Path folder;
    private final long restNanos;
    private final Map<Path, Seen> seen = new HashMap<>();

    /**
     * How a file looked.
     *
     * @param sinceNanos  when it was first seen like this
     * @param given       whether it was given, or lay there before
     */
    private record Seen(long bytes, long changedMillis, long sinceNanos, boolean given) {
        boolean isLike(BasicFileAttributes now) {
            return bytes == now.size()
                    && changedMillis == now.lastModifiedTime().toMillis();
        }
    }

    /**
     * Begins to watch.
     *
     * @param rest  how long a file must not have changed to be complete
     * @throws IOException when the folder cannot be read
     */
    public FolderWatch(Path folder, Duration rest) throws IOException {
        this.folder = folder;
        this.restNanos = rest.toNanos();
        for (Path file : files()) {
            look(file, 0L, true);
        }
    }

    /** Returns how many files lay there before. */
    public int before() {
        return seen.size();
    }

    /** Returns the folder. */
    public Path folder() {
        return folder;
    }

    /**
     * Returns the files that have become complete since the last time, the oldest first.
     *
     * @param nowNanos  of a clock that only goes forward
     * @throws IOException when the folder cannot be read
     */
    public List<Path> complete(long nowNanos) throws IOException {
        Map<Path, Long> complete = new HashMap<>();
        List<Path> files = files();
        seen.keySet().retainAll(files);
        for (Path file : files) {
            look(file, nowNanos, false);
            Seen now = seen.get(file);
            if (now != null && !now.given() && now.bytes() > 0 && nowNanos - now.sinceNanos() >= restNanos) {
                seen.put(file, new Seen(now.bytes(), now.changedMillis(), now.sinceNanos(), true));
                complete.put(file, now.changedMillis());
            }
        }
        return complete.entrySet().stream()
                .sorted(Map.Entry.<Path, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private void look(Path file, long nowNanos, boolean given) throws IOException {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            Seen before = seen.get(file);
            if (before == null || !before.isLike(now)) {
                seen.put(file, new Seen(now.size(), now.lastModifiedTime().toMillis(), nowNanos, given));
            }
        } catch (NoSuchFileException e) {
            seen.remove(file); // gone between listing and looking
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(Files::isRegularFile)
                    .filter(file -> isFinishedName(file.getFileName().toString()))
                    .toList();
        }
    }

    private static boolean isFinishedName(String name) {
        return !name.startsWith(".") && UNFINISHED.stream().noneMatch(name::endsWith);
    }
}
