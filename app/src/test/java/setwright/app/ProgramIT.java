package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a user starts it, from another folder. */
final class ProgramIT {

    private static final Path PROGRAM =
            Path.of(System.getProperty("setwright.program")).toAbsolutePath().normalize();

    @TempDir
    private Path elsewhere;

    @Test
    void startsFromAnyFolder() throws Exception {
        assertThat(run(PROGRAM, "--version")).isEqualTo(new Outcome(0, "setwright 0.1.0\n", ""));
    }

    @Test
    void startsThroughALinkToALink() throws Exception {
        Path folder = Files.createDirectory(elsewhere.resolve("a folder"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), PROGRAM);
        Path linkToLink = Files.createSymbolicLink(elsewhere.resolve("short"), elsewhere.relativize(link));

        Outcome outcome = run(linkToLink, "--version");
        Files.delete(linkToLink); // or clearing the temporary folder warns of links that lead out of it
        Files.delete(link);

        assertThat(outcome.exitCode()).isZero();
    }

    @Test
    void passesTheExitCodeOnAndKeepsMessagesOffStandardOutput() throws Exception {
        Outcome outcome = run(PROGRAM, "no-such-command");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.results()).isEmpty();
        assertThat(outcome.messages()).contains("no-such-command");
    }

    @Test
    void keepsTheClassesThatItLoadsAnewWhereItsFolderWasMoved() throws Exception {
        run(PROGRAM, "--version");
        Path folder = PROGRAM.resolveSibling("app/target/run").toRealPath();
        Path place;
        try (Stream<Path> kept = Files.list(folder)) {
            place = kept.filter(file -> file.toString().endsWith(".home"))
                    .findFirst()
                    .orElseThrow();
        }
        Files.writeString(place, elsewhere + "\n");

        Outcome outcome = run(PROGRAM, "--version");

        assertThat(outcome.exitCode()).isZero();
        assertThat(Files.readString(place)).isEqualTo(folder + "\n");
    }

    private Outcome run(Path program, String... arguments) throws IOException, InterruptedException {
        Path results = elsewhere.resolve("results.txt");
        Path messages = elsewhere.resolve("messages.txt");
        List<String> command = Stream.concat(Stream.of(program.toString()), Stream.of(arguments))
                .toList();
        int exitCode = new ProcessBuilder(command)
                .directory(elsewhere.toFile())
                .redirectOutput(results.toFile())
                .redirectError(messages.toFile())
                .start()
                .waitFor();
        return new Outcome(exitCode, Files.readString(results), Files.readString(messages));
    }

    private record Outcome(int exitCode, String results, String messages) {}
}
