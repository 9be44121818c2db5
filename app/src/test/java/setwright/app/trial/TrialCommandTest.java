package setwright.app.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import setwright.app.command.DeskOpener;
import setwright.app.command.ExitCode;
import setwright.app.command.Failures;
import setwright.app.command.TrialCommand;
import setwright.app.command.TrialJudgeCommand;
import setwright.app.command.TrialPlanCommand;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.LapReplay;
import setwright.app.scoreboard.Home;
import setwright.core.judgement.Diagnostician;
import setwright.core.proposal.Proposer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code trial}, from files to what is printed. The practice case comes from another simulation: its second setup is the quicker one. */
final class TrialCommandTest {
    private static final Path CASE = Home.cases().resolve("practice-08");
    private static final String FIRST = CASE.resolve("stint1.csv.gz").toString();
    private static final String SECOND = CASE.resolve("stint2.csv.gz").toString();
    private static final Path BEFORE = CASE.resolve("car_stint1.yaml");
    private static final Path AFTER = CASE.resolve("car_stint2.yaml");

    private static final DeskOpener DESK = logbook -> new StintDesk(logbook, Diagnostician::diagnose);

    @TempDir
    private Path folder;

    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();

    private int run(Diagnoser diagnoser, Object... arguments) {
        return run("judge", diagnoser, arguments);
    }

    private int run(String command, Diagnoser diagnoser, Object... arguments) {
        List<String> words = new ArrayList<>(List.of(command));
        for (Object argument : arguments) {
            words.add(argument.toString());
        }
        return new CommandLine(new TrialCommand())
                .addSubcommand(new TrialPlanCommand(diagnoser, DESK, Proposer::propose, LapReplay::predict))
                .addSubcommand(new TrialJudgeCommand(diagnoser, DESK, LapReplay::predict))
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages))
                .execute(words.toArray(String[]::new));
    }

    private static Diagnoser real() {
        return new FileDiagnoser(Diagnostician::diagnose);
    }

    private static Diagnoser unasked() {
        return (request, progress) -> {
            throw new AssertionError("no recording is to be read");
        };
    }

    @Test
    void aQuickerSetupIsKeptAndTheJsonKeepsToItsSchema() throws IOException {
        assertThat(run(real(), FIRST, SECOND, "--car", BEFORE, "--car", AFTER, "--json"))
                .as(messages.toString())
                .isEqualTo(ExitCode.DONE);
        assertKeeps("../docs/trial.schema.json");
        JsonNode tree = JsonMapper.shared().readTree(results.toString());
        assertThat(tree.at("/verdict").asString()).isEqualTo("keep");
        assertThat(tree.at("/changes/0/item").asString()).isEqualTo("front_bar");
        assertThat(tree.at("/changes/0/from").asString()).isEqualTo("9");
        assertThat(tree.at("/changes/0/to").asString()).isEqualTo("4");
        assertThat(tree.at("/lap_time_s/high").asDouble()).isNegative();
        assertThat(tree.at("/drift_s").isNull()).as("two runs").isTrue();
        assertThat(tree.at("/side_effects").size()).isPositive();
        assertThat(tree.at("/sectors").size()).isEqualTo(3);
        double sectors = 0.0;
        for (JsonNode sector : tree.at("/sectors")) {
            sectors += sector.at("/time_s/value").asDouble();
        }
        assertThat(sectors)
                .as("parts of the lap make the whole; the scatter of each is estimated for itself")
                .isCloseTo(tree.at("/lap_time_s/value").asDouble(), within(0.02));
        assertThat(tree.at("/predicted/lap_time_s/central").isNumber()).isTrue();
    }

    private void assertKeeps(String schema) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of(schema)), InputFormat.JSON)
                        .validate(results.toString(), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void aPlanSaysWhatRunsWouldShow() throws IOException {
        Path other = Home.cases().resolve("practice-01");
        assertThat(run("plan", real(), other.resolve("stint1.csv.gz"), "--car", other.resolve("car.yaml"), "--json"))
                .isEqualTo(ExitCode.DONE);
        assertKeeps("../docs/trial-plan.schema.json");
        JsonNode plans = JsonMapper.shared().readTree(results.toString()).at("/plans");
        assertThat(plans.at("/2/least_dt_s").asDouble())
                .as("five runs see less than two")
                .isPositive()
                .isLessThan(plans.at("/0/least_dt_s").asDouble());
        assertThat(plans.at("/1/least_target_deg").asDouble()).isPositive();
        JsonNode change = JsonMapper.shared().readTree(results.toString()).at("/change");
        assertThat(change.at("/item").asString()).isEqualTo("front_wing");
        JsonNode enough = plans.get(plans.size() - 1);
        assertThat(Math.abs(change.at("/expected_dt_s").asDouble())
                                >= enough.at("/least_dt_s").asDouble()
                        || Math.abs(change.at("/target_deg").asDouble())
                                >= enough.at("/least_target_deg").asDouble())
                .as("the last plan sees what is expected")
                .isTrue();
        results.getBuffer().setLength(0);
        assertThat(run("plan", real(), FIRST, "--car", BEFORE)).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("Nothing is proposed", "A B A", "Come back to A");
    }

    @Test
    void theWayBackIsUndone() {
        assertThat(run(real(), SECOND, FIRST, "--car", AFTER, "--car", BEFORE)).isEqualTo(ExitCode.DONE);
        assertThat(results.toString())
                .contains(
                        "Undo the change.",
                        "front_bar 4 to 9",
                        "slower by more than chance",
                        "Drive the first setup once more");
        assertThat(results.toString().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void whereTheFirstSetupComesBackTheDayIsTakenOut() {
        int code = run(real(), FIRST, SECOND, FIRST, "--car", BEFORE, "--car", AFTER);
        assertThat(code).isIn(ExitCode.DONE, ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(results.toString())
                .contains("The day itself", "may be chance")
                .doesNotContain("Undo");
    }

    @Test
    void theSameSetupTwiceIsNoTrial() {
        assertThat(run(unasked(), FIRST, SECOND, "--car", BEFORE, "--car", BEFORE))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("differs", "same values throughout");
    }

    @Test
    void twoChangesAtOnceAreRefusedUnlessTheyBelongTogether() throws IOException {
        Path both = folder.resolve("both.yaml");
        Files.writeString(
                both, Files.readString(AFTER).replaceFirst("rear_bar: \\{value: [0-9]+", "rear_bar: {value: 2"));
        assertThat(run(unasked(), FIRST, SECOND, "--car", BEFORE, "--car", both))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("front_bar 9 to 4", "rear_bar", "--together");
        assertThat(run(real(), FIRST, SECOND, "--car", BEFORE, "--car", both, "--together", "one kit"))
                .isEqualTo(ExitCode.DONE);
        assertThat(results.toString().replaceAll("\\s+", " ")).contains("(together: one kit)");
    }

    @Test
    void aThirdSetupIsRefused() throws IOException {
        Path third = folder.resolve("third.yaml");
        Files.writeString(
                third, Files.readString(AFTER).replaceFirst("front_bar: \\{value: 4", "front_bar: {value: 6"));
        assertThat(run(unasked(), FIRST, SECOND, SECOND, "--car", BEFORE, "--car", AFTER, "--car", third))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("a third one: front_bar 9 to 6");
    }

    @Test
    void sheetsAndLooksMustFitTheRuns() {
        assertThat(run(unasked(), FIRST, SECOND, SECOND, "--car", BEFORE)).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("--car", "3 recordings", "1 sheets");
        assertThat(run(unasked(), FIRST, SECOND, "--car", BEFORE, "--car", AFTER, "--look", "2"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("--look", "2 of 1");
        assertThat(run(unasked(), FIRST, SECOND, "--car", BEFORE, "--car", "none.yaml"))
                .isEqualTo(ExitCode.BAD_INPUT);
    }
}
