package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.command.ExitCode;
import setwright.app.diagnose.Progress;
import setwright.app.predict.LapReplay;
import setwright.app.scoreboard.Home;
import setwright.app.trial.TrialAnswer;
import setwright.core.judgement.Diagnostician;
import setwright.logbook.Logbook;
import setwright.logbook.row.VerdictRow;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A day with the logbook, in order: laps come in, are judged, a change is planned, made, driven, judged and undone. Two runs of one car from another
 * simulation; the second setup is the quicker one.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class DayAtTheCircuitTest {
    private static final Path CASE = Home.cases().resolve("practice-08");
    private static final Path FIRST = CASE.resolve("stint1.csv.gz");
    private static final Path SECOND = CASE.resolve("stint2.csv.gz");
    private static final Path BEFORE = CASE.resolve("car_stint1.yaml");
    private static final Path AFTER = CASE.resolve("car_stint2.yaml");

    @TempDir
    private static Path folder;

    private Path logbook;
    private Program program;

    @BeforeAll
    void open() {
        logbook = folder.resolve("season");
        program = new Program("--logbook", logbook.toString());
    }

    private void assertKeeps(String schema) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs", schema)), InputFormat.JSON)
                        .validate(program.said(), InputFormat.JSON))
                .isEmpty();
    }

    private static List<String> texts(JsonNode list, String field) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(node -> node.get(field).asString())
                .toList();
    }

    @Test
    @Order(1)
    void nothingIsReadFromALogbookThatIsNotThere() {
        for (String[] call :
                new String[][] {{"log"}, {"diagnose"}, {"propose", "3"}, {"setup", "show"}, {"trial", "judge"}}) {
            assertThat(program.run((Object[]) call)).as(String.join(" ", call)).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(program.complaint()).contains("there is no logbook in " + logbook, "setwright add");
        }
        assertThat(logbook).doesNotExist();
    }

    @Test
    @Order(2)
    void lapsComeIn() throws IOException {
        assertThat(program.run(
                        "add",
                        FIRST,
                        "--car",
                        BEFORE,
                        "--name",
                        "Heron",
                        "--driver",
                        "Ines",
                        "--at",
                        "Lakeside",
                        "--json"))
                .as(program.complaint())
                .isEqualTo(ExitCode.DONE);
        assertKeeps("add.schema.json");
        JsonNode came = program.tree().at("/recordings/0");
        assertThat(came.at("/known").asBoolean()).isFalse();
        assertThat(came.at("/new_circuit").asBoolean()).isTrue();
        assertThat(came.at("/stint/stint").asInt()).isEqualTo(1);
        assertThat(came.at("/stint/good_laps").asInt()).isEqualTo(8);
        assertThat(came.at("/stint/circuit").asString()).isEqualTo("Lakeside");
        assertThat(came.at("/aside/0/why").asString()).contains("began at");
        try (Stream<Path> kept = Files.list(logbook.resolve("recordings"))) {
            assertThat(kept).singleElement().asString().endsWith(".parquet");
        }
    }

    @Test
    @Order(3)
    void theSameFileIsReadOnce() throws IOException {
        Path copy = Files.copy(FIRST, folder.resolve("copy of it.csv.gz"));

        assertThat(program.run("add", copy)).isEqualTo(ExitCode.DONE);

        assertThat(program.said()).contains("is in the logbook already, as stint 1.");
        assertThat(program.run("log", "--stints", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("log.schema.json");
        assertThat(program.tree().at("/stints").size()).isEqualTo(1);
    }

    @Test
    @Order(4)
    void aStintIsJudgedLikeItsFile() throws IOException {
        assertThat(program.run("diagnose", "--json")).isEqualTo(ExitCode.DONE);
        JsonNode kept = program.tree();
        assertThat(program.run("diagnose", FIRST, "--car", BEFORE, "--json")).isEqualTo(ExitCode.DONE);
        JsonNode file = program.tree();

        assertThat(kept.at("/verdict")).isEqualTo(file.at("/verdict"));
        for (String same : List.of("name", "used", "times", "channels", "remarks")) {
            assertThat(kept.at("/recording").get(same))
                    .isEqualTo(file.at("/recording").get(same));
        }
        assertThat(texts(kept.at("/findings"), "phase")).isEqualTo(texts(file.at("/findings"), "phase"));
        assertThat(program.run("propose")).isEqualTo(ExitCode.DONE);
        assertThat(program.run("propose", "1", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("propose.schema.json");
        assertThat(program.tree().at("/verdict")).isEqualTo(kept.at("/verdict"));
        assertThat(program.tree().at("/chosen").isNull())
                .as("the verdict asks for no change")
                .isTrue();
        assertThat(program.run("log", "proposed")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("Proposed after stint 1: no change of the car.");
        assertThat(program.run("diagnose", "1", "--car", BEFORE)).isEqualTo(ExitCode.USAGE);
        assertThat(program.run("diagnose", "7")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("no stint 7", "The last one is stint 1");
    }

    @Test
    @Order(5)
    void aTrialIsPlannedAndLocksEverythingElse() throws IOException {
        assertThat(program.run("trial", "plan", "front_bar=4", "rear_bar=5")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("expected one changed item", "--together");
        assertThat(program.run("trial", "plan", "front_bar=40")).isEqualTo(ExitCode.USAGE);
        assertThat(program.run("trial", "judge")).isEqualTo(ExitCode.BAD_INPUT);

        assertThat(program.run("trial", "plan", "1", "front_bar=4", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("trial-plan.schema.json");
        assertThat(program.tree().at("/changes/0/to").asString()).isEqualTo("4");
        assertThat(program.tree().at("/opened/order").asString()).isEqualTo("ABA");

        assertThat(program.run("trial", "plan", "rear_bar=5")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("trial 1 (front_bar 9 to 4 position) of Heron is under way");
        assertThat(program.run("setup", "change", "rear_bar=5")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("is under way", "rear_bar 4 to 5");
        assertThat(program.run("trial", "judge")).isEqualTo(ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(program.complaint()).contains("runs without the change and with it");
    }

    @Test
    @Order(6)
    void theChangeIsMadeAndDriven() {
        assertThat(program.run("setup", "change", "front_bar=4", "--why", "it pushes"))
                .isEqualTo(ExitCode.DONE);
        assertThat(program.said()).isEqualTo("Heron: setup 2: front_bar 9 to 4 position (it pushes).\n");

        assertThat(program.run("add", SECOND)).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("By Ines in Heron with setup 2 at Lakeside.");
        assertThat(program.run("log", "--note", "turns in at once, très bien", "--about", "2"))
                .isEqualTo(ExitCode.DONE);
    }

    @Test
    @Order(7)
    void theTrialIsJudgedOnce() throws IOException {
        Path page = folder.resolve("trial.html");
        assertThat(program.run("trial", "judge", "--json", "--html", page)).isEqualTo(ExitCode.DONE);
        assertKeeps("trial.schema.json");
        assertThat(program.tree().at("/verdict").asString()).isEqualTo("keep");
        assertThat(program.tree().at("/runs/1/name").asString()).isEqualTo("stint 2");
        assertThat(page).content().contains("Keep the change", "front_bar 9 to 4");

        assertThat(program.run("trial", "judge")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("no trial of Heron is under way");
    }

    /** A verdict can be looked at again with all its laps, long after; nothing is judged or written by that. */
    @Test
    @Order(8)
    void aVerdictIsLookedAtAgain() throws IOException {
        Logbook open = Logbook.open(logbook.toString(), Optional.empty(), false);
        LogbookTrials trials =
                new LogbookTrials(open, new StintDesk(open, Diagnostician::diagnose), LapReplay::predict);
        int entries = new StoryDesk(open).all().size();
        TrialAnswer again = trials.review(1, Progress.silent());
        VerdictRow before = open.look(tables -> tables.verdicts().last(1)).orElseThrow();
        assertThat(again.trial().verdict().words()).isEqualTo(before.verdict()).isEqualTo("keep");
        assertThat(again.trial().reason()).isEqualTo(before.reason());
        assertThat(new StoryDesk(open).all()).hasSize(entries);
        assertThatThrownBy(() -> trials.review(99, Progress.silent())).hasMessageContaining("there is no trial 99");
    }

    @Test
    @Order(9)
    void whatWasTriedIsShownAndUsed() throws IOException {
        assertThat(program.run("trial", "tried", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("trial-tried.schema.json");
        JsonNode effect = program.tree().at("/trials/0/effects/0");
        assertThat(effect.at("/what").asString()).isEqualTo("lap time");
        assertThat(effect.at("/measured").asDouble()).isNegative();
        assertThat(effect.at("/predicted").isNumber()).isTrue();
        double measured = effect.at("/measured").asDouble();
        double told = effect.at("/predicted").asDouble();

        assertThat(program.run("predict", "1", "front_bar=4", "--json")).isEqualTo(ExitCode.DONE);
        double now = program.tree().at("/predictions/0/lap_time_s/value").asDouble();
        assertThat(now).as("drawn toward what was measured").isBetween(measured, told - 0.01);
        assertThat(program.said()).contains("learnt from front_bar being tried on this car");
        assertThat(program.run("predict", "1", "front_spring=-1step", "--json")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).doesNotContain("learnt from");
    }

    @Test
    @Order(10)
    void whatWasSaidOfAStintCanBeCorrected() throws IOException {
        assertThat(program.run("add", FIRST, "--driver", "Bo")).isEqualTo(ExitCode.DONE);
        assertThat(program.complaint()).contains("stint 1 stays as it is", "setwright amend 1");
        assertThat(program.run("amend", "1", "--driver", "Bo", "--tyre-age", "4", "--fuel", "31.5"))
                .isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("driver Bo (was Ines), tyres 4 laps old, fuel 31.5 kg");
        assertThat(program.run("amend", "1", "--driver", "Ines", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("amend.schema.json");
        assertThat(program.tree().at("/words").asString()).contains("driver Ines (was Bo)");
        assertThat(program.run("amend", "1")).isEqualTo(ExitCode.USAGE);
        assertThat(program.run("amend", "1", "--fuel", "9999")).isEqualTo(ExitCode.USAGE);
        assertThat(program.run("trial", "plan", "1", "front_bar=4")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("stint 1 was judged in trial 1 of the same change");
    }

    @Test
    @Order(11)
    void aChangeIsUndone() throws IOException {
        assertThat(program.run("setup", "undo")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).isEqualTo("Heron: setup 1 is on the car again.\n");
        assertThat(program.run("setup", "show", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("setup.schema.json");
        assertThat(program.tree().at("/setups/0/items/front_bar/value").asDouble())
                .isEqualTo(9.0);

        assertThat(program.run("setup", "change", "front_bar=4")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).as("the same values are the same version").contains("setup 2 is on the car again");
        assertThat(program.run("setup", "use", "1")).isEqualTo(ExitCode.DONE);
        assertThat(program.run("setup", "use", "3")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("Heron has no setup 3. It has 1, 2.");
        assertThat(program.run("setup", "diff", "1", "2", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("setup-diff.schema.json");
        assertThat(program.tree().at("/changes/0/item").asString()).isEqualTo("front_bar");
        assertThat(program.run("setup", "show", "2", "--sheet")).isEqualTo(ExitCode.DONE);
        assertThat(Files.readString(AFTER)).contains("front_bar: {value: 4");
        assertThat(program.said()).contains("front_bar: {value: 4");
    }

    @Test
    @Order(12)
    void aSheetWithOtherFactsIsAskedAbout() throws IOException {
        String other =
                Files.readString(BEFORE).replaceFirst("mass_with_driver_kg: [0-9.]+", "mass_with_driver_kg: 777");
        Path sheet = Files.writeString(folder.resolve("corrected.yaml"), other);
        Path laps = Files.write(folder.resolve("more.csv"), new byte[] {1, 2, 3});

        assertThat(program.run("add", laps, "--car", sheet, "--name", "Heron")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint())
                .contains("mass_with_driver_kg", "to 777", "another car", "setup new corrected.yaml");
        assertThat(program.run("setup", "new", sheet, "--name", "Heron", "--why", "weighed"))
                .isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("setup 3: mass_with_driver_kg", "to 777 (weighed)");
        assertThat(program.run("setup", "undo")).isEqualTo(ExitCode.DONE);
    }

    @Test
    @Order(13)
    void aBriefIsWritten() throws IOException {
        Path brief = folder.resolve("sheets");
        assertThat(program.run("brief", "1", "--out", brief)).isEqualTo(ExitCode.DONE);
        assertThat(folder.resolve("sheets.html")).content().contains("Ines", "Heron, setup 1", "Lakeside");
        assertThat(Files.readAllBytes(folder.resolve("sheets.pdf")))
                .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(program.run("brief", "1", "--driver", "Bo")).isEqualTo(ExitCode.USAGE);
    }

    @Test
    @Order(14)
    void theStoryIsToldInOrderAndCanBeSearched() throws IOException {
        assertThat(program.run("log", "--json")).isEqualTo(ExitCode.DONE);
        assertKeeps("log.schema.json");
        assertThat(texts(program.tree().at("/entries"), "kind"))
                .startsWith(
                        "setup",
                        "stint",
                        "diagnosis",
                        "proposal",
                        "trial",
                        "setup",
                        "stint",
                        "note",
                        "verdict",
                        "stint");
        assertThat(program.run("log")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("Note. Stint 2: turns in at once, très bien");

        assertThat(program.run("log", "turn", "TRÈS", "--json")).isEqualTo(ExitCode.DONE);
        assertThat(program.tree().at("/entries").size()).isEqualTo(1);
        assertThat(program.run("log", "--day", "2001-01-01")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("Nothing was written");
    }

    @Test
    @Order(15)
    void everythingCanBeTakenOut() throws IOException {
        Path out = folder.resolve("out");
        assertThat(program.run("export", "--out", out)).as(program.complaint()).isEqualTo(ExitCode.DONE);
        JsonNode stints = JsonMapper.shared().readTree(Files.readString(out.resolve("stint.json")));
        assertThat(stints.size()).isEqualTo(2);
        assertThat(stints.at("/0/best_s").asDouble()).isBetween(60.0, 70.0);
        assertThat(Files.readString(out.resolve("entry.json"))).contains("très bien");
        String columns = JsonMapper.shared()
                .readTree(Files.readString(out.resolve("recording.json")))
                .at("/0/file")
                .asString();
        assertThat(out.resolve("recordings").resolve(columns)).exists();
        assertThat(program.run("export", "--out", out)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("is not empty");

        assertThat(program.run("export", "trials", "--as", "json")).isEqualTo(ExitCode.DONE);
        assertKeeps("export.schema.json");
        assertThat(texts(program.tree().at("/rows"), "verdict")).isNotEmpty();
        assertThat(program.run("export", "passes", "1", "2", "--as", "json")).isEqualTo(ExitCode.DONE);
        assertKeeps("export.schema.json");
        assertThat(texts(program.tree().at("/rows"), "stint"))
                .contains("1", "2")
                .hasSizeGreaterThan(100);
    }

    @Test
    @Order(16)
    void aFileThatWasChangedIsRefused() throws IOException {
        try (Stream<Path> kept = Files.list(logbook.resolve("recordings"))) {
            for (Path file : kept.toList()) {
                byte[] bytes = Files.readAllBytes(file);
                bytes[bytes.length / 2]++;
                Files.write(file, bytes);
            }
        }
        assertThat(program.run("diagnose", "1")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("changed or damaged since");
    }
}
