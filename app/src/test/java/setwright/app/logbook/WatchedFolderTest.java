package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.command.ExitCode;
import setwright.app.scoreboard.Home;
import setwright.app.server.Recordings;

/** A logger's folder, watched from the command line; a net for a watch that never ends. */
@Timeout(180)
class WatchedFolderTest {
    private static final Path CASE = Home.cases().resolve("practice-02");

    @TempDir
    private Path folder;

    @Test
    void aRunIsReadAndJudgedOnceItIsComplete() throws Exception {
        Path incoming = Files.createDirectory(folder.resolve("from the logger"));
        Files.writeString(incoming.resolve("morning.csv"), "left alone");
        Program program = new Program("--logbook", folder.resolve("season").toString());
        byte[] run = Recordings.withoutLastLine(CASE.resolve("stint1.csv.gz"));
        CompletableFuture<Void> logger = CompletableFuture.runAsync(() -> {
            try {
                while (!program.complaint().contains("watching")) {
                    Thread.sleep(20);
                }
                Files.writeString(incoming.resolve("notes.txt"), "no table");
                Path file = incoming.resolve("run 1.csv");
                Files.write(file, Arrays.copyOf(run, run.length / 2));
                Files.write(file, run);
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        int code = program.run(
                "add", "--watch", incoming, "--until", "1", "--car", CASE.resolve("car.yaml"), "--driver", "Ada");
        logger.join();
        assertThat(program.complaint())
                .contains(
                        "watching " + incoming + "; the file that is in it is left alone",
                        "notes.txt, line 1: expected");
        assertThat(code).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("Stint 1", "run 1.csv", "Verdict").doesNotContain("morning");
    }

    @Test
    void aFolderIsNeededAndAFolderMustBeThere() {
        Program program = new Program("--logbook", folder.resolve("season").toString());
        assertThat(program.run("add")).isEqualTo(ExitCode.USAGE);
        assertThat(program.complaint()).contains("name a recording, or a folder to watch with --watch");
        assertThat(program.run("add", "--until", "3", "x.csv")).isEqualTo(ExitCode.USAGE);
        assertThat(program.run("add", "--watch", folder.resolve("nowhere"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("nowhere");
    }
}
