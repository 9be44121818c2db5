package setwright.intake.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.intake.car.CarSheetReader;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.problem.InputProblem;

/** Car sheets and channel maps that somebody damaged, or wrote to do harm. */
class HostileSheetsTest {
    @TempDir
    private Path folder;

    private static List<byte[]> sheets() throws Exception {
        List<byte[]> sheets = new ArrayList<>();
        for (int i = 1; i <= 7; i++) {
            try (InputStream in = Objects.requireNonNull(
                    HostileSheetsTest.class.getResourceAsStream("/cases/practice-0" + i + "/car.yaml"))) {
                sheets.add(in.readAllBytes());
            }
        }
        return sheets;
    }

    @Test
    void aDamagedSheetIsReadOrRefusedInOneSentence() throws Exception {
        List<byte[]> sheets = sheets();
        Mutator mutator = new Mutator(5);
        Path file = folder.resolve("car.yaml");
        int read = 0;
        int refused = 0;
        for (int i = 0; i < Inputs.share(0.15); i++) {
            Files.write(file, mutator.damaged(sheets.get(i % 7), sheets.get((i * 3 + 1) % 7)));
            try {
                CarSheetReader.read(file);
                read++;
            } catch (InputProblem problem) {
                assertThat(problem.getMessage())
                        .as("input %d", i)
                        .startsWith("car.yaml")
                        .doesNotContain("\n");
                refused++;
            }
        }
        assertThat(read).isPositive();
        assertThat(refused).isPositive();
    }

    /** Anchors that unfold to a billion, tags that would make objects, depth and width without end. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c,*c,*c]\n",
                "description: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[]]]\n",
                "description: &x {y: *x}\n",
                "<<: {description: *nowhere}\n",
                "DEEP",
                "WIDE"
            })
    void whatIsMadeToDoHarmDoesNone(String text) throws Exception {
        String whole = switch (text) {
            case "DEEP" -> "a: " + "[".repeat(100_000);
            case "WIDE" -> "a: [" + "1,".repeat(3_000_000) + "1]\n";
            default -> text;
        };
        Path sheet = Files.writeString(folder.resolve("car.yaml"), whole);
        assertThatThrownBy(() -> CarSheetReader.read(sheet)).isInstanceOf(InputProblem.class);
        Path map = Files.writeString(folder.resolve("map.yaml"), whole);
        assertThatThrownBy(() -> ChannelMapFile.read(map)).isInstanceOf(InputProblem.class);
    }
}
