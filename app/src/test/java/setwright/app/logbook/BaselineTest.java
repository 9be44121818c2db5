package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import setwright.app.command.ExitCode;
import setwright.app.diagnose.BaselineFile;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.scoreboard.Home;
import setwright.core.circuit.Corner;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.TimeSince;
import setwright.core.numerics.Robust;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Laps held against other laps of the same car, as files and in the logbook; two runs of one car from another simulation. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class BaselineTest {
    private static final Path CASE = Home.cases().resolve("practice-08");
    private static final Path LAPS = CASE.resolve("stint1.csv.gz");
    private static final Path SHEET = CASE.resolve("car_stint1.yaml");
    private static final Path GOOD = CASE.resolve("stint2.csv.gz");
    private static final Path GOOD_SHEET = CASE.resolve("car_stint2.yaml");

    private static final double SAME_M = 25.0;
    private static final int BAD_USAGE = CommandLine.ExitCode.USAGE;

    @TempDir
    private static Path folder;

    private Program program;

    @BeforeAll
    void open() {
        program = new Program("--logbook", folder.resolve("season").toString());
        for (Path[] run : new Path[][] {{LAPS, SHEET}, {GOOD, GOOD_SHEET}}) {
            List<Object> call = new ArrayList<>(List.of("add", run[0], "--car", run[1]));
            call.addAll(List.of("--name", "Heron", "--driver", "Ines", "--at", "Lakeside"));
            assertThat(program.run(call.toArray())).as(program.complaint()).isEqualTo(ExitCode.DONE);
        }
    }

    private static Diagnosis held() throws IOException {
        return new FileDiagnoser(Diagnostician::diagnose)
                .diagnose(
                        DiagnoseRequest.of(LAPS, Optional.of(SHEET), Optional.empty(), Optional.empty())
                                .against(Optional.of(new BaselineFile(GOOD, Optional.of(GOOD_SHEET)))),
                        Progress.silent())
                .diagnosis();
    }

    private static double measuredDeg(Diagnosis held, int corner, Phase phase) {
        return Math.toDegrees(Robust.median(Robust.finite(held.passes().stream()
                .filter(pass -> pass.corner() == corner)
                .flatMap(pass -> pass.phase(phase).stream())
                .mapToDouble(PhaseBalance::excessRad)
                .toArray())));
    }

    /**
     * The second run was driven with the balanced setup, so that the truth of each corner, which another simulation wrote down, is what the first
     * differs by. Half of all places are to be within what calibration leaves of two recordings; in single ones the driver makes mistakes.
     */
    @Test
    void whatTwoStintsDifferByIsMeasuredWithinTheDoubtThatIsClaimed() throws IOException {
        JsonNode truth = JsonMapper.shared().readTree(Files.readString(CASE.resolve("truth.json")));
        Diagnosis held = held();
        List<Double> apart = new ArrayList<>();
        for (JsonNode real : truth.get("corners")) {
            Optional<Corner> corner = held.stint().circuit().corners().stream()
                    .filter(found ->
                            Math.abs(found.apexM() - real.get("s_apex_m").asDouble()) < SAME_M)
                    .findFirst();
            for (Phase phase : List.of(Phase.ENTRY, Phase.MID, Phase.EXIT)) {
                JsonNode delta = real.get("delta_vs_balanced_deg").get(phase.words());
                corner.map(found -> measuredDeg(held, found.number(), phase))
                        .filter(measured -> delta.isNumber() && Double.isFinite(measured))
                        .ifPresent(measured -> apart.add(Math.abs(measured - delta.asDouble())));
            }
        }
        double[] all = apart.stream().mapToDouble(Double::doubleValue).toArray();
        assertThat(all.length).isGreaterThanOrEqualTo(20);
        assertThat(Robust.median(all)).as("typical error, deg").isLessThan(0.08);
        assertThat(Robust.quantile(all, 0.75)).as("upper quarter, deg").isLessThan(2.0 * Math.hypot(0.08, 0.1));
    }

    /** The lap times that the other simulation wrote down; its driver loses most of the difference in one corner. */
    @Test
    void whatTheLapsLostIsWhatTheTruthSays() throws IOException {
        JsonNode truth = JsonMapper.shared().readTree(Files.readString(CASE.resolve("truth.json")));
        Diagnosis held = held();
        TimeSince time = held.grounds().time().orElseThrow();
        assertThat(medianS(truth, 0) - medianS(truth, 1))
                .isBetween(time.whole().lowS(), time.whole().highS());
        assertThat(truth.at("/back_to_back/true_lap_time_delta_s").asDouble()).isNegative();
        assertThat(time.whole().lowS()).isPositive();
        assertThat(time.corners()).hasSameSizeAs(held.stint().circuit().corners());
        assertThat(held.findings().get(0).price().seconds())
                .isEqualTo(time.whole().seconds());
        assertThat(time.where().orElseThrow()).contains("in corner 4");
    }

    private static double medianS(JsonNode truth, int stint) {
        return Robust.median(truth.get("stints")
                .get(stint)
                .get("laps")
                .valueStream()
                .filter(lap -> lap.get("kind").asString().equals("flying"))
                .mapToDouble(lap -> lap.get("time_s").asDouble())
                .toArray());
    }

    @Test
    void everyCornerSaysWhatItTakesMore() throws IOException {
        Object[] call = {"diagnose", LAPS, "--car", SHEET, "--baseline", GOOD, "--baseline-car", GOOD_SHEET};
        Program text = new Program();
        text.run(call);
        assertThat(text.said().replaceAll("\\s+", " "))
                .contains(" time driving ", "more than in the baseline, with the straight after the corner");
        Program alone = new Program();
        alone.run("diagnose", LAPS, "--car", SHEET);
        assertThat(alone.said().replaceAll("\\s+", " "))
                .doesNotContain(" time laps driving", " time driving", "Time in s more");

        Program json = new Program();
        json.run(Stream.concat(Stream.of(call), Stream.of("--json")).toArray());
        mustKeepTheSchema(json);
        JsonNode since = json.tree().at("/time_since_baseline");
        double sum = since.get("corners")
                .valueStream()
                .mapToDouble(corner -> corner.at("/longer/time_s").asDouble())
                .sum();
        assertThat(sum).isCloseTo(since.at("/lap/time_s").asDouble(), within(0.3));
        assertThat(since.at("/lap/time_s_low").asDouble())
                .isLessThan(since.at("/lap/time_s_high").asDouble());
    }

    @Test
    void onlyTheItemThatWasChangedIsHeldAgainstTheBaseline() throws IOException {
        assertThat(held().grounds().standing().items())
                .extracting(item -> item.item().name(), item -> item.usual())
                .containsExactly(tuple("front_bar", 4.0));
    }

    @Test
    void filesAndStintsGiveTheSameAnswer() throws IOException {
        Object[] files = {"diagnose", LAPS, "--car", SHEET, "--baseline", GOOD, "--baseline-car", GOOD_SHEET, "--json"};
        Program alone = new Program();
        int code = alone.run(files);
        assertThat(code).as(alone.complaint()).isIn(ExitCode.DONE, ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(alone.said()).contains("stint2.csv.gz");
        int kept = program.run("diagnose", "1", "--baseline", "2", "--json");
        assertThat(kept).as(program.complaint()).isEqualTo(code);
        assertThat(program.tree().get("verdict")).isEqualTo(alone.tree().get("verdict"));
        assertThat(program.tree().at("/setup/held_against").asString()).isEqualTo("baseline");
        assertThat(alone.tree().at("/setup/baseline").asString()).isEqualTo("stint2.csv.gz");
        assertThat(alone.tree().at("/setup/items/0/usual").asDouble()).isEqualTo(4.0);
        mustKeepTheSchema(alone);
        assertThat(program.run("log")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("held against stint 2");
        assertThat(program.run("diagnose", "1", "--baseline", "2")).isEqualTo(code);
        assertThat(program.run("propose", "1", "--baseline", "2")).isIn(ExitCode.DONE, ExitCode.NOT_ENOUGH_EVIDENCE);
    }

    /** A sheet without ranges, and another compound: neither keeps quiet what was changed. */
    @Test
    void whatWasChangedIsToldWhateverTheSheetLacks() throws IOException {
        Path now = bare(SHEET, "blue");
        Program alone = new Program();
        assertThat(alone.run(
                        "diagnose",
                        LAPS,
                        "--car",
                        now,
                        "--baseline",
                        GOOD,
                        "--baseline-car",
                        bare(GOOD_SHEET, "red"),
                        "--json"))
                .as(alone.complaint())
                .isIn(ExitCode.DONE, ExitCode.NOT_ENOUGH_EVIDENCE);
        assertThat(alone.tree().at("/setup/changed"))
                .extracting(change -> change.get("item").asString())
                .containsExactly("front_bar", "front_tyre_compound");
        assertThat(alone.tree().at("/setup/items/0/item").asString()).isEqualTo("front_bar");
        assertThat(alone.said()).contains("front tyre compound red to blue");
        mustKeepTheSchema(alone);
    }

    private static void mustKeepTheSchema(Program program) throws IOException {
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Files.readString(Path.of("../docs/diagnose.schema.json")), InputFormat.JSON)
                        .validate(program.said(), InputFormat.JSON))
                .isEmpty();
    }

    private static Path bare(Path sheet, String tyres) throws IOException {
        String withoutRanges = Files.readString(sheet).replaceAll(", min: [^,]*, max: [^,]*,", ",");
        return Files.writeString(
                folder.resolve(tyres + ".yaml"), withoutRanges + "\n  front_tyre_compound: {value: " + tyres + "}\n");
    }

    /** Once somebody said so, nobody has to name it again. */
    @Test
    void aStintInGoodOrderIsTheBaselineOfTheOthers() {
        assertThat(program.run("amend", "2", "--good-order")).isEqualTo(ExitCode.DONE);
        assertThat(program.said()).contains("the car was in good order", "held against it");
        assertThat(program.run("log", "--stints", "--json")).isEqualTo(ExitCode.DONE);
        assertThat(program.tree().at("/stints"))
                .extracting(stint -> stint.get("good_order").asBoolean())
                .containsExactly(false, true);

        program.run("diagnose", "1", "--json");
        assertThat(program.tree().at("/setup/baseline").asString()).isEqualTo("stint 2");
        program.run("diagnose", "1", "--baseline", "none", "--json");
        assertThat(program.tree().at("/setup/held_against").asString()).isEqualTo("ranges");
        program.run("diagnose", "2", "--json");
        assertThat(program.tree().at("/setup/held_against").asString())
                .as("not against itself")
                .isEqualTo("ranges");

        assertThat(program.run("amend", "2", "--no-good-order")).isEqualTo(ExitCode.DONE);
        program.run("diagnose", "1", "--json");
        assertThat(program.tree().at("/setup/held_against").asString()).isEqualTo("ranges");
    }

    @Test
    void whatIsNoBaselineIsRefusedInAWord() throws IOException {
        assertThat(program.run("diagnose", "1", "--baseline", "1")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.complaint()).contains("cannot be held against itself");
        assertThat(program.run("diagnose", "1", "--baseline", "9")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(program.run("diagnose", "1", "--baseline", GOOD)).isEqualTo(BAD_USAGE);
        assertThat(program.complaint()).contains("name its number as --baseline");
        assertThat(program.run("diagnose", "1", "--baseline", "2", "--baseline-car", GOOD_SHEET))
                .isEqualTo(BAD_USAGE);
        Program alone = new Program();
        assertThat(alone.run("diagnose", LAPS, "--car", SHEET, "--baseline", "2"))
                .isEqualTo(BAD_USAGE);
        assertThat(alone.complaint()).contains("a recording is held against a recording");
        assertThat(alone.run("diagnose", LAPS, "--car", SHEET, "--baseline-car", GOOD_SHEET))
                .isEqualTo(BAD_USAGE);
        assertThat(alone.run("diagnose", LAPS, "--car", SHEET, "--baseline", folder.resolve("none.csv")))
                .isEqualTo(ExitCode.BAD_INPUT);
        Path longer = folder.resolve("longer.yaml");
        Files.writeString(
                longer, Files.readString(GOOD_SHEET).replaceFirst("(?m)^wheelbase_m: .*$", "wheelbase_m: 3.9"));
        assertThat(alone.run("diagnose", LAPS, "--car", SHEET, "--baseline", GOOD, "--baseline-car", longer))
                .isEqualTo(ExitCode.BAD_INPUT);
        assertThat(alone.complaint()).contains("a baseline of the same car", "wheelbase");
    }
}
