package setwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The built program on the recording that comes with it, and on input that is none. */
final class AnswersIT {
    private static final Path PROGRAM =
            Path.of(System.getProperty("setwright.program")).toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    private static final Pattern ADDRESS = Pattern.compile("(?m)^http://127\\.0\\.0\\.1:[0-9]+/$");

    private Path recording;
    private Path car;

    @BeforeEach
    void unpack() throws IOException {
        recording = unpack("stint.csv.gz");
        car = unpack("car.yaml");
    }

    /**
     * The story is computed: its acts are there, and its figures come from laps that were driven for it. It ends with the page, on which its
     * stints and its trial are, until it is stopped.
     */
    @Test
    void theDemoTellsTheWholeStoryAndEndsWithItsPages() throws Exception {
        Path results = folder.resolve("demo.txt");
        Process demo = new ProcessBuilder(
                        PROGRAM.toString(), "demo", "--keep", "laps", "--page", "--no-browser", "--port", "0")
                .directory(folder.toFile())
                .redirectOutput(results.toFile())
                .redirectError(folder.resolve("demo-messages.txt").toFile())
                .start();
        Matcher address = ADDRESS.matcher(Files.readString(results));
        while (demo.isAlive() && !address.reset(Files.readString(results)).find()) {
            TimeUnit.MILLISECONDS.sleep(200);
        }
        String page = address.group();
        String stints = text(page);
        assertThat(stints).contains("as-he-came.csv", "coached.csv", "changed.csv", "before-again.csv");
        assertThat(text(page + "story")).contains("Trial 1 is planned");
        demo.toHandle().destroy();
        assertThat(demo.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readString(results))
                .contains(
                        "As the driver came",
                        "Coach the driver first",
                        "The same driver, coached",
                        "What is true",
                        "rear end too stiff in roll");
        Path report = folder.resolve("setwright-demo-report.html");
        Path evidence = folder.resolve("setwright-demo-report-evidence.html");
        assertThat(Files.readString(results))
                .contains(report.toRealPath().toString())
                .contains(evidence.toRealPath().toString());
        assertThat(report).content().startsWith("<!doctype html>").contains("Lap times", evidence.getFileName() + "");
        assertThat(evidence).content().startsWith("<!doctype html>").contains("id=\"corner-1\"");
        assertThat(folder.resolve("laps/coached.csv")).isNotEmptyFile();
        assertThat(folder.resolve("laps/coached-car.yaml")).isNotEmptyFile();
        assertThat(folder.resolve("demo-messages.txt"))
                .content()
                .startsWith("The page of ")
                .hasLineCount(1);
    }

    private static String text(String address) throws IOException {
        try (InputStream in = URI.create(address).toURL().openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void whatIsSimulatedCanBeReadAgainAndASeedRepeatsIt() throws Exception {
        String[] laps = {
            "simulate", "--car", "hobbrick", "--circuit", "skarnholt", "--laps", "4", "--seed", "7", "--json"
        };
        Outcome first =
                run(Stream.concat(Stream.of(laps), Stream.of("--out", "one")).toArray(String[]::new));
        Outcome again =
                run(Stream.concat(Stream.of(laps), Stream.of("--out", "two")).toArray(String[]::new));
        assertThat(first.exitCode()).isZero();
        assertKeeps("../docs/simulate.schema.json", first.results());
        assertThat(again.results()).isEqualTo(first.results());
        assertThat(folder.resolve("one/recording.csv")).hasSameBinaryContentAs(folder.resolve("two/recording.csv"));
        Outcome read = run("diagnose", "one/recording.csv", "--car", "one/car.yaml", "--json");
        assertThat(read.exitCode()).isIn(0, 4);
        assertThat(JsonMapper.shared()
                        .readTree(read.results())
                        .at("/recording/laps")
                        .asInt())
                .isBetween(4, 6);
    }

    @Test
    void whatTheWorldDoesNotHaveIsRefusedInOneSentence() throws Exception {
        assertThat(run("simulate", "--car", "orvan").messages()).contains("Is \"orvane\" meant?");
        assertThat(run("simulate", "--fault", "rear bar to stiff").messages())
                .contains("Is \"rear bar too stiff\" meant?");
        assertThat(run("simulate", "--laps", "0").exitCode()).isEqualTo(2);
        assertThat(run("demo", "--circuit", "nowhere").exitCode()).isEqualTo(2);
    }

    @Test
    void theJsonKeepsToItsSchemaAndStandsAlone() throws Exception {
        Outcome outcome =
                run("diagnose", recording.toString(), "--car", car.toString(), "--json", "--html", "report.html");
        assertThat(outcome.exitCode()).isZero();
        assertKeeps("../docs/diagnose.schema.json", outcome.results());
        JsonNode json = JsonMapper.shared().readTree(outcome.results());
        assertThat(json.at("/recording/used").size()).isGreaterThan(4);
        assertThat(json.at("/driving/corners").size()).isGreaterThan(5);
        assertThat(json.at("/recording/channels").size()).isGreaterThan(8);
        assertThat(outcome.messages()).isEqualTo("Report: report.html\n");
        assertThat(folder.resolve("report.html")).exists();
    }

    @Test
    void aKeptMapAndAKeptCircuitGiveTheSameCorners() throws Exception {
        Outcome first = run(
                "diagnose",
                recording.toString(),
                "--json",
                "--write-map",
                "map.yaml",
                "--save-circuit",
                "circuit.json");
        Outcome second =
                run("diagnose", recording.toString(), "--json", "--map", "map.yaml", "--circuit", "circuit.json");
        assertThat(second.messages()).isEmpty();
        JsonMapper mapper = JsonMapper.shared();
        assertThat(corners(mapper.readTree(second.results()))).isEqualTo(corners(mapper.readTree(first.results())));
    }

    @Test
    void theProposedMapCanBeUsedAsItIs() throws Exception {
        Outcome map = run("map", recording.toString(), "--car", car.toString());
        assertThat(map.exitCode()).isZero();
        assertThat(map.results()).contains("channels:", "speed:", "# ");
        Files.writeString(folder.resolve("map.yaml"), map.results());
        assertThat(run("diagnose", recording.toString(), "--map", "map.yaml").exitCode())
                .isIn(0, 4);
    }

    @Test
    void carCheckSaysWhatIsAssumed() throws Exception {
        Files.writeString(folder.resolve("some.yaml"), "description: some car\nwheelbase_m: 2.6\n");
        Outcome outcome = run("car", "check", "some.yaml");
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.results()).contains("some car", "2.600", "Assumed");
    }

    /** Common practice: a rear bar that is stiffer, or a smaller rear wing, takes understeer out; more slowly, less so. */
    @Test
    void predictionsHaveTheSignsOfTheTradeAndKeepToTheirSchema() throws Exception {
        JsonNode bar = predicted("rear_bar=+2steps");
        JsonNode wing = predicted("rear_wing=-2steps");
        assertThat(balance(bar, "mid", "medium")).isNegative();
        assertThat(balance(wing, "mid", "high")).isNegative();
        assertThat(Math.abs(balance(wing, "mid", "high"))).isGreaterThan(Math.abs(balance(wing, "mid", "low")));
    }

    private JsonNode predicted(String change) throws Exception {
        Outcome outcome = run("predict", recording.toString(), "--car", car.toString(), change, "--json");
        assertThat(outcome.exitCode()).as(outcome.messages()).isZero();
        assertKeeps("../docs/predict.schema.json", outcome.results());
        return JsonMapper.shared().readTree(outcome.results()).at("/predictions/0");
    }

    private static double balance(JsonNode prediction, String phase, String speed) {
        for (JsonNode pooled : prediction.get("phases")) {
            if (pooled.get("phase").asString().equals(phase)
                    && pooled.get("speed").asString().equals(speed)) {
                return pooled.at("/balance_deg/value").asDouble();
            }
        }
        throw new AssertionError("no " + phase + " in corners of " + speed + " speed: " + prediction.get("phases"));
    }

    @Test
    void theFitTellsWhatLapsTellAndWhatTheyDoNot() throws Exception {
        Outcome outcome =
                run("car", "fit", recording.toString(), "--car", car.toString(), "--json", "--html", "f.html");
        assertThat(outcome.exitCode()).as(outcome.messages()).isZero();
        assertKeeps("../docs/car-fit.schema.json", outcome.results());
        assertThat(outcome.results()).contains("\"engine_power\"", "needs damper figures");
        assertThat(folder.resolve("f.html")).content().contains("Acceleration at full throttle");
    }

    private static void assertKeeps(String schema, String json) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of(schema)), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void noColourReachesAFile() throws Exception {
        assertThat(run("diagnose", recording.toString(), "--car", car.toString())
                        .results())
                .doesNotContain("\u001b");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "empty.csv | ''",
                "words.csv | 'this is\nnot a table\nof numbers\n'",
                "one.csv | 'time [s],speed [km/h],steer [deg]\n0,100,1\n'",
                "twice.csv | 'time,speed,speed\n0,1,2\n1,2,3\n2,3,4\n3,4,5\n'",
                "short.csv | 'time [s],speed [m/s],steer [deg],yaw rate [rad/s]\n0,10,0,0\n0.1,10,0,0\n0.2,10,0,0\n0.3,10,0,0\n'",
                "text.csv | 'time [s],speed [m/s],steer [deg],yaw rate [rad/s]\n0,10,0,0\n0.1,oops,0,0\n0.2,10,0,0\n0.3,10,0,0\n'"
            })
    void badInputIsOneMessageAndExitCodeThree(String name, String content) throws Exception {
        Files.writeString(folder.resolve(name), content);
        Outcome outcome = run("diagnose", name, "--html", "report.html", "--save-circuit", "circuit.json");
        assertThat(outcome.exitCode()).as(outcome.messages()).isEqualTo(3);
        assertThat(outcome.results()).isEmpty();
        assertThat(outcome.messages().lines()).hasSize(1);
        assertThat(outcome.messages()).startsWith("setwright: " + name).doesNotContain("Exception", "\tat ");
        assertThat(folder.resolve("report.html")).doesNotExist();
        assertThat(folder.resolve("circuit.json")).doesNotExist();
    }

    @Test
    void aMissingFileABadSheetAndABadCircuitAreBadInput() throws Exception {
        assertThat(run("diagnose", "nowhere.csv").exitCode()).isEqualTo(3);
        Files.writeString(folder.resolve("bad.yaml"), "wheelbase_m: long\n");
        Outcome sheet = run("diagnose", recording.toString(), "--car", "bad.yaml");
        assertThat(sheet.exitCode()).isEqualTo(3);
        assertThat(sheet.messages()).contains("bad.yaml", "wheelbase_m", "long");
        Files.writeString(folder.resolve("bad.json"), "{\"version\": 1}");
        Outcome circuit = run("diagnose", recording.toString(), "--circuit", "bad.json");
        assertThat(circuit.exitCode()).isEqualTo(3);
        assertThat(circuit.messages()).contains("bad.json", "--save-circuit");
    }

    @Test
    void wrongUsageIsExitCodeTwo() throws Exception {
        assertThat(run("diagnose", "3", "--car", "car.yaml").exitCode()).isEqualTo(2);
        assertThat(run("diagnose", recording.toString(), "--units", "cubits").exitCode())
                .isEqualTo(2);
        assertThat(run("diagnose", recording.toString(), "--colour").exitCode()).isEqualTo(2);
        assertThat(run("car").exitCode()).isEqualTo(2);
        Outcome nothing = run("diagnose");
        assertThat(nothing.exitCode()).isEqualTo(3);
        assertThat(nothing.messages()).contains("there is no logbook in setwright-logbook yet", "setwright add");
    }

    private static List<String> corners(JsonNode json) {
        return json.at("/balance")
                .valueStream()
                .map(cell -> cell.at("/corner") + " " + cell.at("/direction") + " " + cell.at("/phase"))
                .toList();
    }

    private Path unpack(String name) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = AnswersIT.class.getResourceAsStream("/demo/" + name)) {
            Files.copy(in, file);
        }
        return file;
    }

    private Outcome run(String... arguments) throws IOException, InterruptedException {
        Path results = folder.resolve("results.txt");
        Path messages = folder.resolve("messages.txt");
        int exitCode = new ProcessBuilder(Stream.concat(Stream.of(PROGRAM.toString()), Stream.of(arguments))
                        .toList())
                .directory(folder.toFile())
                .redirectOutput(results.toFile())
                .redirectError(messages.toFile())
                .start()
                .waitFor();
        return new Outcome(exitCode, Files.readString(results), Files.readString(messages));
    }

    private record Outcome(int exitCode, String results, String messages) {}
}
