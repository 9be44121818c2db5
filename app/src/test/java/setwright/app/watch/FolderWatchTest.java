package setwright.app.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that a logger writes into, with a clock that the test moves. */
class FolderWatchTest {
    private static final long SECOND = 1_000_000_000L;

    @TempDir
    private Path folder;

    private FolderWatch watch() throws IOException {
        return new FolderWatch(folder, Duration.ofSeconds(3));
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    @Test
    void aFileIsGivenOnceWhenItNoLongerGrows() throws IOException {
        FolderWatch watch = watch();
        Path file = write("run.csv", "a");
        assertThat(watch.complete(10 * SECOND)).isEmpty();
        write("run.csv", "b");
        assertThat(watch.complete(12 * SECOND)).isEmpty();
        assertThat(watch.complete(14 * SECOND)).as("two seconds after it grew").isEmpty();
        assertThat(watch.complete(15 * SECOND)).containsExactly(file);
        assertThat(watch.complete(60 * SECOND)).isEmpty();
    }

    @Test
    void whatLayThereBeforeIsLeftUnlessItChanges() throws IOException {
        Path file = write("morning.csv", "a");
        FolderWatch watch = watch();
        assertThat(watch.before()).isEqualTo(1);
        assertThat(watch.complete(60 * SECOND)).isEmpty();
        write("morning.csv", "more");
        assertThat(watch.complete(61 * SECOND)).isEmpty();
        assertThat(watch.complete(70 * SECOND)).containsExactly(file);
    }

    @Test
    void aFileThatGoesOnIsGivenAgain() throws IOException {
        FolderWatch watch = watch();
        Path file = write("run.csv", "a");
        watch.complete(0);
        assertThat(watch.complete(5 * SECOND)).containsExactly(file);
        write("run.csv", "b");
        watch.complete(6 * SECOND);
        assertThat(watch.complete(10 * SECOND)).containsExactly(file);
    }

    @Test
    void unfinishedHiddenAndEmptyFilesAndFoldersAreNotMeant() throws IOException {
        FolderWatch watch = watch();
        for (String name : List.of("run.csv.part", ".run.csv", "run.csv~", "copy.tmp")) {
            write(name, "a");
        }
        write("begun.csv", "");
        Files.createDirectory(folder.resolve("inside"));
        watch.complete(0);
        assertThat(watch.complete(60 * SECOND)).isEmpty();
    }

    @Test
    void theOldestComesFirst() throws IOException {
        FolderWatch watch = watch();
        Path second = write("a.csv", "a");
        Path first = write("b.csv", "a");
        Files.setLastModifiedTime(second, FileTime.fromMillis(2000));
        Files.setLastModifiedTime(first, FileTime.fromMillis(1000));
        watch.complete(0);
        assertThat(watch.complete(9 * SECOND)).containsExactly(first, second);
    }

    @Test
    void aFileThatIsGoneIsForgotten() throws IOException {
        FolderWatch watch = watch();
        Path file = write("run.csv", "a");
        watch.complete(0);
        Files.delete(file);
        assertThat(watch.complete(9 * SECOND)).isEmpty();
        write("run.csv", "a");
        assertThat(watch.complete(10 * SECOND)).isEmpty();
        assertThat(watch.complete(20 * SECOND)).containsExactly(file);
    }
}
