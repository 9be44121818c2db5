package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** No figure is shown that {@code docs/figures.md} does not explain. */
final class FiguresPageTest {
    private static final Path DOCS = Path.of("..", "docs");

    /** What has a unit in its name, or is a number without one. */
    private static final Pattern FIGURE = Pattern.compile(
            ".*_(deg|s|m|m2s2|share|ratio|discovery)|probability.*|grip|strength|place|s|gain|cost|more_laps|laps_needed");

    @TempDir
    private Path folder;

    private String page = "";

    @BeforeEach
    void read() throws Exception {
        page = Files.readString(DOCS.resolve("figures.md"));
    }

    @Test
    void everyFigureOfADiagnosisIsExplained() throws Exception {
        TreeSet<String> names = new TreeSet<>();
        collect(JsonMapper.shared().readTree(Files.readString(DOCS.resolve("diagnose.schema.json"))), names);
        assertThat(names)
                .hasSizeGreaterThan(25)
                .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
    }

    private static void collect(JsonNode schema, TreeSet<String> names) {
        for (String name : schema.path("properties").propertyNames()) {
            String middle = name.replaceFirst("_(low|high)$", "");
            if (FIGURE.matcher(middle).matches()) {
                names.add(middle);
            }
        }
        schema.valueStream().forEach(below -> collect(below, names));
    }

    @Test
    void everyRowOfACarCheckIsExplained() throws Exception {
        Path sheet = folder.resolve("car.yaml");
        try (InputStream in = FiguresPageTest.class.getResourceAsStream("/demo/car.yaml")) {
            Files.copy(in, sheet);
        }
        StringWriter results = new StringWriter();
        CommandLine program = Main.commandLine().setOut(new PrintWriter(results));
        assertThat(program.execute("car", "check", sheet.toString())).isZero();
        List<String> rows = results.toString()
                .lines()
                .dropWhile(line -> !line.startsWith("at rest and at 1 g"))
                .skip(1)
                .takeWhile(line -> line.strip().contains("  ")) // the table's columns; a sentence follows it
                .map(line -> line.strip().split(" {2,}")[0])
                .toList();
        assertThat(rows)
                .hasSizeGreaterThan(6)
                .allSatisfy(row -> assertThat(page).contains(row));
    }

    @Test
    void everySumIsExplained() {
        CommandLine sums = Main.commandLine().getSubcommands().get("sums");
        assertThat(sums.getSubcommands().keySet())
                .isNotEmpty()
                .allSatisfy(name -> assertThat(page).contains("`sums " + name + "`"));
    }
}
