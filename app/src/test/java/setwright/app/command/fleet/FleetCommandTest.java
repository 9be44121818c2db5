package setwright.app.command.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import setwright.app.command.Failures;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetEngine;
import setwright.app.fleet.FleetRequest;
import setwright.app.fleet.FleetRequest.Again;
import setwright.app.fleet.SummaryRequest;

/** What the commands ask of an engine, and what they make of its answers. */
final class FleetCommandTest {
    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();
    private final List<Object> asked = new ArrayList<>();

    private int run(Optional<FleetEngine> engine, String... arguments) {
        CommandLine program = FleetCommand.with(() -> engine);
        return program.setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .execute(arguments);
    }

    private Optional<FleetEngine> counting(int judged, int notEnough, int failed) {
        return Optional.of(new FleetEngine() {
            @Override
            public FleetCount diagnose(FleetRequest request, Consumer<String> told) {
                asked.add(request);
                told.accept("half of it.");
                return new FleetCount(
                        judged + notEnough + failed,
                        0,
                        judged,
                        notEnough,
                        failed,
                        0,
                        failed == 0 ? List.of() : List.of(new FleetCount.Failure("a/b.csv", "b.csv: is empty.")),
                        1.5);
            }

            @Override
            public String summary(SummaryRequest request) {
                asked.add(request);
                return "the answers\n";
            }
        });
    }

    @Test
    void optionsBecomeARequest() {
        assertThat(run(
                        counting(1, 0, 0),
                        "diagnose",
                        "--in",
                        "a",
                        "--out",
                        "b",
                        "--workers",
                        "3",
                        "--limit",
                        "7",
                        "--again",
                        "failed",
                        "--assume-car"))
                .isZero();
        assertThat(run(counting(1, 0, 0), "diagnose", "--in", "a", "--out", "b"))
                .isZero();
        assertThat(run(counting(1, 0, 0), "summary", "--in", "b", "--driver", "Ines", "--json"))
                .isZero();
        assertThat(asked)
                .containsExactly(
                        new FleetRequest("a", "b", "local[*]", 3, 7, Again.FAILED, true),
                        new FleetRequest("a", "b", "local[*]", 0, Integer.MAX_VALUE, Again.NONE, false),
                        new SummaryRequest("b", "local[*]", Optional.of("Ines"), Optional.empty(), true));
        assertThat(results.toString()).contains("1 recordings: 1 judged").endsWith("the answers\n");
    }

    @Test
    void failuresAreListedAndAreNoFailureOfTheRun() {
        assertThat(run(counting(5, 1, 2), "diagnose", "--in", "a", "--out", "b"))
                .isZero();
        assertThat(results.toString())
                .contains(
                        "8 recordings: 5 judged, 1 without enough evidence, 2 failed (each with its reason in b/recordings)");
        assertThat(messages.toString())
                .contains("setwright: half of it.", "a/b.csv: b.csv: is empty.", "and 1 more, listed in b/recordings");
    }

    @Test
    void theExitCodeSaysWhetherAnythingWasJudged() {
        assertThat(run(counting(0, 0, 2), "diagnose", "--in", "a", "--out", "b"))
                .isEqualTo(3);
        assertThat(run(counting(0, 1, 2), "diagnose", "--in", "a", "--out", "b"))
                .isEqualTo(4);
    }

    @Test
    void jsonKeepsToItsSchema() throws IOException {
        assertThat(run(counting(5, 1, 2), "diagnose", "--in", "a", "--out", "b", "--json"))
                .isZero();
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs/fleet.schema.json")), InputFormat.JSON)
                        .validate(results.toString(), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void wrongUsageIsToldInASentence() {
        assertThat(run(counting(1, 0, 0), "diagnose", "--in", "a", "--out", "b", "--workers", "2", "--master", "local"))
                .isEqualTo(2);
        assertThat(run(counting(1, 0, 0), "diagnose", "--in", "a", "--out", "b", "--workers", "0"))
                .isEqualTo(2);
        assertThat(run(counting(1, 0, 0), "diagnose", "--in", "a", "--out", "b", "--limit", "0"))
                .isEqualTo(2);
        assertThat(run(counting(1, 0, 0), "diagnose", "--in", "a")).isEqualTo(2);
        assertThat(asked).isEmpty();
        assertThat(messages.toString())
                .contains("give one of them", "--workers is 1 to 256", "--limit is 1 or more", "--out");
    }

    @Test
    void aCopyWithoutTheEngineSaysSo() {
        assertThat(run(Optional.empty(), "diagnose", "--in", "a", "--out", "b")).isEqualTo(2);
        assertThat(messages.toString())
                .contains("this copy comes without Apache Spark")
                .hasLineCount(1);
        assertThat(FleetEngine.find())
                .as("Spark is not on the program's own class path")
                .isEmpty();
    }
}
