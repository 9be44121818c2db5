package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.command.ExitCode;
import setwright.app.scoreboard.Home;
import setwright.logbook.Logbook;

/** A disk that has room for the tables, not for a recording. Needs the right to mount one; skipped where that is not given. */
final class FullDiskTest {
    private static final Path CASE = Home.cases().resolve("practice-01");

    @TempDir
    private Path folder;

    private Path disk;

    @BeforeEach
    void mount() throws IOException, InterruptedException {
        disk = Files.createDirectories(folder.resolve("disk"));
        assumeTrue(
                call("mount", "-t", "tmpfs", "-o", "size=1200k", "setwright-test", disk.toString()) == 0,
                "skipped: no small disk can be mounted here");
    }

    @AfterEach
    void unmount() throws IOException, InterruptedException {
        call("umount", disk.toString());
    }

    private static int call(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
        } catch (IOException e) {
            return 1; // no such program
        }
    }

    @Test
    void nothingIsKeptAndItIsSaid() throws IOException {
        Path season = disk.resolve("season");
        Program program = new Program("--logbook", season.toString());

        assertThat(program.run("add", CASE.resolve("stint1.csv.gz"), "--car", CASE.resolve("car.yaml")))
                .as(program.complaint())
                .isEqualTo(ExitCode.BAD_INPUT);

        assertThat(program.complaint()).contains("cannot write").hasLineCount(1);
        try (Stream<Path> files = Files.list(season.resolve("recordings"))) {
            assertThat(files).isEmpty();
        }
        Logbook logbook = Logbook.open(season.toString(), Optional.empty(), false);
        assertThat(logbook.look(tables -> tables.stints().lines()).size()).isZero();
        assertThat(program.run("setup", "new", CASE.resolve("car.yaml"), "--name", "Heron"))
                .as("there is room for a setup")
                .isEqualTo(ExitCode.DONE);
    }
}
