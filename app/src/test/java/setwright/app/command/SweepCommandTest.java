package setwright.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import setwright.app.circuit.CircuitFile;
import setwright.app.example.Example;
import setwright.app.example.ExampleSweep;
import setwright.core.simulation.sweep.SweepItem;

/** {@code sweep} with the work behind it replaced. */
final class SweepCommandTest {
    private static final String SHEET = """
            bar_wheel_rate_front_N_per_mm: {base: 9.0, per_position: 3.6}
            setup:
              front_bar: {value: 5, unit: position, min: 1, max: 11, step: 1}
              front_bump: {value: 14, unit: clicks, min: 1, max: 30, step: 1}
            """;

    @TempDir
    private Path folder;

    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();
    private final List<SweepItem> asked = new ArrayList<>();
    private boolean fitted;
    private String sheet;
    private String circuit;

    @BeforeEach
    void writeFiles() throws IOException {
        sheet = Files.writeString(folder.resolve("car.yaml"), SHEET).toString();
        Path file = folder.resolve("circuit.json");
        CircuitFile.write(file, Example.answer().diagnosis().stint().circuit());
        circuit = file.toString();
    }

    @Test
    void theAnswerComesFirstAndSaysWhatItCannotKnow() {
        assertThat(run("front_bar", "--car", sheet, "--circuit", circuit)).isEqualTo(ExitCode.DONE);
        assertThat(results.toString())
                .startsWith("Quickest with front_bar 3 position: 0.08 s a lap under the present")
                .contains("no dampers", "checked by a qualified person", "5 *");
        assertThat(asked).hasSize(1);
        assertThat(fitted).isFalse();
    }

    @Test
    void aRecordingGivesCircuitAndCar() {
        assertThat(run("front_bar=2..6", "--car", sheet, "--recording", "laps.csv"))
                .isEqualTo(ExitCode.DONE);
        assertThat(asked.get(0).values()).hasSize(5);
        assertThat(fitted).isTrue();
        assertThat(results.toString()).contains("car fitted to the laps of");
    }

    @Test
    void aCircuitIsNeededAndHowToGetOneIsSaid() {
        assertThat(run("front_bar", "--car", sheet)).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("--circuit FILE or --recording FILE", "--save-circuit");
        assertThat(run("front_bar", "--circuit", circuit)).isEqualTo(ExitCode.USAGE);
        assertThat(run("front_bar", "--car", sheet, "--circuit", "nowhere.json"))
                .isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void dampersAreRefused() {
        assertThat(run("front_bump", "--car", sheet, "--circuit", circuit)).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).startsWith("setwright: front_bump: dampers act only while the body moves");
        assertThat(results.toString()).isEmpty();
    }

    @Test
    void jsonAndPageComeFromTheSameCall() {
        Path page = folder.resolve("page.html");
        assertThat(run("front_bar", "--car", sheet, "--circuit", circuit, "--json", "--html", page.toString()))
                .isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).startsWith("{").endsWith("}\n");
        assertThat(page).content().startsWith("<!doctype html>");
        assertThat(run("front_bar", "--car", sheet, "--circuit", circuit, "--html", circuit))
                .isEqualTo(ExitCode.BAD_INPUT);
    }

    private int run(String... arguments) {
        return new CommandLine(
                        new SweepCommand((request, progress) -> Example.answer(), (car, laps, where, items, onLap) -> {
                            asked.addAll(items);
                            fitted = laps.isPresent();
                            return ExampleSweep.one().sweep();
                        }))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .execute(arguments);
    }
}
