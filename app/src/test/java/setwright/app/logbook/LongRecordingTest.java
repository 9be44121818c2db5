package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.scoreboard.Home;

/** A recording of two and a half hours: the laps of a case again and again, with stops between them. */
class LongRecordingTest {
    private static final Path CASE = Home.cases().resolve("practice-01");
    private static final double LENGTH_S = 9000.0;
    private static final double STOP_S = 30.0;
    /** Every third row will do: twenty a second. */
    private static final int STRIDE = 3;

    @TempDir
    private Path folder;

    @Test
    void becomesSeveralStintsOnOneCircuit() throws IOException {
        Path file = folder.resolve("day.csv");
        write(file, 0.0, LENGTH_S);
        Program program = new Program("--logbook", folder.resolve("season").toString());
        assertThat(program.run("add", file, "--car", CASE.resolve("car.yaml"), "--driver", "Ines", "--json"))
                .as(program.complaint())
                .isZero();
        assertThat(program.tree().get("recordings")).hasSize(2);
        assertThat(program.said()).contains("day.csv, part 1 of 2", "day.csv, part 2 of 2", "cut where the car stands");
        assertThat(program.tree().get("recordings").get(0).get("new_circuit").asBoolean())
                .isTrue();
        assertThat(program.tree().get("recordings").get(1).get("new_circuit").asBoolean())
                .isFalse();

        assertThat(program.tree().at("/recordings/1/stint/circuit").asString())
                .isEqualTo(program.tree().at("/recordings/0/stint/circuit").asString())
                .isNotEmpty();

        assertThat(program.run("add", file)).isZero();
        assertThat(program.said()).contains("as stint 1", "as stint 2");
        assertThat(program.run("diagnose", "2", "--json")).isIn(0, 4);
    }

    @Test
    void leavesOutAPartWithoutLapsAndTakesTheCircuitFromTheNext() throws IOException {
        Path file = folder.resolve("late.csv");
        write(file, LENGTH_S, 2000.0);
        Program program = new Program("--logbook", folder.resolve("season").toString());
        assertThat(program.run("add", file, "--car", CASE.resolve("car.yaml"), "--driver", "Ines", "--json"))
                .as(program.complaint())
                .isZero();
        assertThat(program.tree().get("recordings")).hasSize(1);
        assertThat(program.said()).contains("late.csv, part 2 of 2", "Left out, part 1 of 2: ");
        assertThat(program.tree().at("/recordings/0/new_circuit").asBoolean()).isTrue();
        assertThat(program.run("add", file)).isZero();
        assertThat(program.said()).contains("as stint 1").doesNotContain("as stint 2");
    }

    /** First the car stands, then it is driven. */
    private static void write(Path file, double standsS, double drivenS) throws IOException {
        List<String> lines = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(CASE.resolve("stint1.csv.gz"))), StandardCharsets.UTF_8))) {
            in.lines().forEach(lines::add);
        }
        int speed = List.of(lines.get(0).split("\t", -1)).indexOf("groundSpeed_mps");
        double first = time(lines.get(1));
        double lasts = time(lines.get(lines.size() - 1)) - first + 0.01;
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write(lines.get(0) + "\n");
            List<String> still = new ArrayList<>(List.of(lines.get(1).split("\t", -1)));
            still.set(speed, "0");
            for (double at = 0.0; at < standsS; at += 0.05) {
                out.write(at(String.join("\t", still), at) + "\n");
            }
            for (double at = standsS; at < standsS + drivenS; at += lasts + STOP_S) {
                for (int i = 1; i < lines.size(); i += STRIDE) {
                    out.write(at(lines.get(i), at + time(lines.get(i)) - first) + "\n");
                }
                String last = lines.get(lines.size() - 1);
                List<String> cells = new ArrayList<>(List.of(last.split("\t", -1)));
                cells.set(speed, "0");
                String standing = String.join("\t", cells);
                for (double rest = 0.0; rest < STOP_S; rest += 0.05) {
                    out.write(at(standing, at + lasts + rest) + "\n");
                }
            }
        }
    }

    private static double time(String line) {
        return Double.parseDouble(line.substring(0, line.indexOf('\t')));
    }

    private static String at(String line, double seconds) {
        return String.format(Locale.ROOT, "%.3f", seconds) + line.substring(line.indexOf('\t'));
    }
}
