package setwright.app.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every library of the program as built has a licence that we take, also where no image can be made. */
final class LicencesIT {
    private static final Path HOME = Path.of("").toAbsolutePath().getParent();

    @TempDir
    private Path folder;

    @Test
    void everyLibraryOfTheProgramMayBeInIt() throws Exception {
        Path bill = Bill.assumeCurrent();
        Path messages = folder.resolve("messages.txt");
        int exitCode = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HOME.resolve(".ci/Notices.java").toString(),
                        bill.toString(),
                        HOME.resolve("app/target/lib").toString(),
                        folder.resolve("notices.md").toString())
                .redirectOutput(messages.toFile())
                .redirectErrorStream(true)
                .start()
                .waitFor();
        assertThat(exitCode).as(Files.readString(messages)).isZero();
        assertThat(folder.resolve("notices.md")).content().contains("duckdb", "uplot", "lit-html");
    }
}
