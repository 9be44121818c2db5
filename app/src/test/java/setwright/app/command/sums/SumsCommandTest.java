package setwright.app.command.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.contentOf;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import setwright.app.command.ExitCode;
import setwright.app.command.Failures;
import setwright.core.car.sums.AirDensity;
import setwright.core.car.sums.Brakes;
import setwright.core.car.sums.Damping;
import setwright.core.car.sums.Gearing;
import setwright.core.car.sums.Gravity;
import setwright.core.car.sums.Ride;
import setwright.core.car.sums.RollStiffness;
import setwright.core.car.sums.TopSpeed;
import setwright.core.car.sums.TyrePressure;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Each sum from options and from a car sheet, as text and as JSON. */
final class SumsCommandTest {
    private static final String SHEET = """
            description: an invented car
            driven_axle: rear
            mass_with_driver_kg: 970
            fuel_start_kg: 30
            front_weight_share: 0.45
            wheelbase_m: 2.5
            track_front_m: 1.5
            track_rear_m: 1.5
            centre_of_mass_height_m: 0.4
            tyre_radius_m: 0.3
            gear_ratios: [2.5, 1.5, 1.0]
            rev_limit_rpm: 7000
            motion_ratio_front: 0.9
            motion_ratio_rear: 0.8
            bar_wheel_rate_front_N_per_mm: {base: 10, per_position: 5}
            setup:
              front_spring: {value: 100, unit: N/mm, min: 60, max: 160, step: 5}
              rear_spring: {value: 90, unit: N/mm, min: 60, max: 160, step: 5}
              front_bar: {value: 2, unit: position, min: 1, max: 5, step: 1}
              brake_bias_front: {value: 62, unit: "%", min: 50, max: 70, step: 0.5}
              front_tyre_pressure: {value: 1.6, unit: bar, min: 1.2, max: 2, step: 0.05}
              rear_tyre_pressure: {value: 1.5, unit: bar, min: 1.2, max: 2, step: 0.05}
              final_drive: {value: 4, unit: ratio, min: 3, max: 5, step: 0.1}
            """;

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(contentOf(Path.of("../docs/sums.schema.json").toFile()), InputFormat.JSON);

    @TempDir
    private Path folder;

    private Path sheet = Path.of("car.yaml");
    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();

    @BeforeEach
    void writeSheet() throws IOException {
        sheet = Files.writeString(folder.resolve("car.yaml"), SHEET);
    }

    /** Command line, symbol, value in the shown unit out of the core, a line of the text. */
    static Stream<Arguments> sums() {
        Brakes brakes = new Brakes(1000.0, 2.5 * 0.55, 2.5 * 0.45, 0.4);
        double bar = 20_000.0;
        double front = RollStiffness.axle(Ride.wheelRate(100_000.0, 0.9), bar, 1.5);
        double rear = RollStiffness.axle(Ride.wheelRate(90_000.0, 0.8), 0.0, 1.5);
        double wheel = Ride.wheelRate(150_000.0, 0.92);
        return Stream.of(
                Arguments.of(
                        "gearing --car SHEET",
                        "v_3",
                        3.6 * new Gearing(4.0, 0.3).speedMps(7000.0 * Math.PI / 30.0, 1.0),
                        "gear 3, speed at the limit              197.9  km/h"),
                Arguments.of("gearing --car SHEET --final-drive 5", "v_3", 0.8 * 197.92034, "158.3  km/h"),
                Arguments.of("gearing --car SHEET --limit-at 197.92033717615698", "i_new", 4.0, "4.000"),
                Arguments.of(
                        "brakes --car SHEET --deceleration 1.2",
                        "p_id",
                        100.0 * brakes.idealFrontShare(1.2 * Gravity.STANDARD_MPS2),
                        "ideal front share at this deceleration      64.2  %"),
                Arguments.of(
                        "brakes --car SHEET --friction 1.1",
                        "z_r",
                        brakes.rearLockMps2(0.62, 1.1) / Gravity.STANDARD_MPS2,
                        "the rear wheels lock"),
                Arguments.of(
                        "ride --spring 150 --motion-ratio 0.92 --mass 180",
                        "f_w",
                        Ride.frequencyHz(wheel, 180.0),
                        "frequency on the spring alone          4.23  Hz"),
                Arguments.of(
                        "ride --car SHEET --axle rear --frequency 3",
                        "k_S",
                        Ride.springRate(Ride.rateFor(3.0, 275.0), 0.8) / 1000.0,
                        "spring rate for 3 Hz"),
                Arguments.of(
                        "damping --spring 150 --motion-ratio 0.92 --mass 180 --damper 6000",
                        "D_c",
                        Damping.ratio(Damping.atWheel(6000.0, 0.92), wheel, 180.0),
                        "damping ratio, 1 is critical   0.531"),
                Arguments.of(
                        "roll --car SHEET",
                        "q_f",
                        100.0 * RollStiffness.frontShare(front, rear),
                        "front share of the roll stiffness    63.7  %"),
                Arguments.of(
                        "transfer --car SHEET --lateral 1.0",
                        "q",
                        100.0 * RollStiffness.frontShare(front, rear),
                        "front share of the lateral transfer        63.7  %"),
                Arguments.of("fuel --laps 20 --per-lap 2.1 --reserve 1", "F", 43.0, "fuel at the start  43.0  l"),
                Arguments.of("fuel --per-lap 2 --car SHEET", "n_0", 20.0, "whole laps on 40.2685 l"),
                Arguments.of(
                        "pressure --cold 1.5 --cold-temperature 20 --hot-temperature 85",
                        "P_h",
                        new TyrePressure(101_325.0).atTemperature(1.5e5, 293.15, 358.15) / 1.0e5,
                        "hot pressure  2.057  bar"),
                Arguments.of(
                        "air --altitude 500 --temperature 25",
                        "rho",
                        AirDensity.dry(AirDensity.standardPressurePa(500.0), 298.15),
                        "density, dry air                      1.1154  kg/m3"),
                Arguments.of(
                        "top-speed --power 100 --drag-area 0.65 --car SHEET",
                        "v",
                        3.6 * new TopSpeed(1.225, 0.65, 0.012, 1000.0).speedMps(100_000.0),
                        "top speed           221.5  km/h"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sums")
    void textShowsTheResultItsFormulaAndItsSource(String arguments, String symbol, double value, String line) {
        assertThat(run(arguments)).as(messages.toString()).isEqualTo(ExitCode.DONE);
        String numbered = symbol.replaceAll("_[0-9]$", ""); // alike formulas are shown once, for the first of them
        assertThat(results.toString()).contains("\nFrom\n", "\nHow\n", "  " + numbered, "\nSource: ");
        assertThat(results.toString().replaceAll(" +", " ")).contains(line.replaceAll(" +", " "));
        assertThat(results.toString().lines())
                .allSatisfy(text -> assertThat(text.length()).isLessThanOrEqualTo(80));
        assertThat(results.toString().chars()).allMatch(c -> c < 128);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sums")
    void jsonEqualsTheCore(String arguments, String symbol, double value, String line) {
        assertThat(run(arguments + " --json")).as(messages.toString()).isEqualTo(ExitCode.DONE);
        assertThat(SCHEMA.validate(results.toString(), InputFormat.JSON)).isEmpty();
        JsonNode json = JsonMapper.shared().readTree(results.toString());
        assertThat(json.path("version").asInt()).isEqualTo(1);
        JsonNode sum = json.path("calculations").path(0);
        JsonNode result = sum.path("results")
                .valueStream()
                .filter(node -> node.path("symbol").asString().equals(symbol))
                .findFirst()
                .orElseThrow();
        double sevenDigits = 1.0e-7;
        assertThat(result.path("value").asDouble()).isCloseTo(value, within(sevenDigits * Math.abs(value)));
        assertThat(result.path("formula").asString()).isNotEmpty();
        assertThat(result.path("numbers").asString()).isNotEmpty().doesNotContain("{");
        assertThat(sum.path("source").asString()).isNotEmpty();
        assertThat(arguments).startsWith(sum.path("name").asString());
    }

    @Test
    void aSheetIsWorkedOutForBothAxles() {
        assertThat(run("ride --car SHEET")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("Ride frequency, front", "Ride frequency, rear");
        assertThat(results.toString().split("Caution: ", -1)).hasSize(2);
    }

    @Test
    void eachValueSaysWhereItComesFrom() {
        assertThat(run("brakes --car SHEET --mass 900 --json")).isEqualTo(ExitCode.DONE);
        JsonNode inputs = JsonMapper.shared()
                .readTree(results.toString())
                .path("calculations")
                .path(0)
                .path("inputs");
        Map<String, String> origins = Map.of("m", "given", "p", "car sheet", "z", "assumed");
        inputs.valueStream()
                .filter(input -> origins.containsKey(input.path("symbol").asString()))
                .forEach(input -> assertThat(input.path("origin").asString())
                        .isEqualTo(origins.get(input.path("symbol").asString())));
        assertThat(inputs.valueStream().map(input -> input.path("symbol").asString()))
                .containsAll(origins.keySet());
    }

    @Test
    void whatTheSheetReaderAssumedIsNotCalledTheSheets() throws IOException {
        sheet = Files.writeString(folder.resolve("bare.yaml"), SHEET.replace("wheelbase_m: 2.5\n", ""));
        assertThat(run("brakes --car SHEET")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString().lines().filter(line -> line.startsWith("  L ")))
                .singleElement()
                .asString()
                .endsWith("assumed");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("wrongUsage")
    void wrongUsageIsOneLine(String arguments, List<String> words) {
        assertThat(run(arguments)).isEqualTo(ExitCode.USAGE);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString().lines()).hasSize(1);
        assertThat(messages.toString()).contains(words);
    }

    static Stream<Arguments> wrongUsage() {
        return Stream.of(
                Arguments.of(
                        "ride --spring 0 --motion-ratio 1 --mass 200", List.of("--spring is 0", "from 1 to 2000 N/mm")),
                Arguments.of("ride --spring NaN --motion-ratio 1 --mass 200", List.of("--spring is NaN")),
                Arguments.of("ride --spring 100 --mass 200", List.of("--motion-ratio is missing", "--car SHEET")),
                Arguments.of("ride --car SHEET --spring 120", List.of("--axle is missing")),
                Arguments.of("damping --car SHEET", List.of("--damper is missing")),
                Arguments.of("brakes --car SHEET --deceleration 5", List.of("rear axle leaves the road")),
                Arguments.of("gearing --car SHEET --gears 1.5,2", List.of("--gears has 2 behind 1.5", "fall")),
                Arguments.of(
                        "gearing --final-drive 3 --rev-limit 7000 --tyre-radius 0.3", List.of("--gears is missing")),
                Arguments.of("roll --car SHEET --share 100", List.of("--share is 100", "1 to 99 %")),
                Arguments.of("transfer --car SHEET --lateral -1", List.of("--lateral is -1", "0 to 8 g")),
                Arguments.of(
                        "transfer --car SHEET --front-roll-stiffness 1 --rear-roll-stiffness 1", List.of("falls over")),
                Arguments.of("fuel --per-lap 2", List.of("--laps is missing")),
                Arguments.of("fuel --per-lap 2 --minutes 30", List.of("--minutes and --lap-time")),
                Arguments.of(
                        "pressure --cold 1.5 --cold-temperature 20", List.of("--hot-temperature is missing", "in C")),
                Arguments.of("air --altitude 20000", List.of("--altitude is 20000", "11000 m")),
                Arguments.of(
                        "top-speed --power 100 --drag-area 0.5", List.of("--mass is missing", "mass_with_driver_kg")));
    }

    @Test
    void aSheetInOtherUnitsIsBadInput() throws IOException {
        sheet = Files.writeString(
                folder.resolve("car.yaml"), SHEET.replace("value: 100, unit: N/mm", "value: 100, unit: lbf/in"));
        assertThat(run("roll --car SHEET")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString())
                .contains("car.yaml, 'setup.front_spring.unit': expected the unit N/mm, found \"lbf/in\"");
    }

    @Test
    void aSheetBeyondWhatMakesSenseIsBadInput() throws IOException {
        sheet = Files.writeString(
                folder.resolve("car.yaml"),
                SHEET.replace(
                        "brake_bias_front: {value: 62, unit: \"%\", min: 50, max: 70",
                        "brake_bias_front:" + " {value: 100, unit: \"%\", min: 50, max: 100"));
        assertThat(run("brakes --car SHEET")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("setup.brake_bias_front", "from 1 to 99 %", "100");
    }

    @Test
    void aMissingSheetIsBadInput() {
        sheet = folder.resolve("none.yaml");
        assertThat(run("roll --car SHEET")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(messages.toString()).contains("there is no such file");
    }

    @Test
    void helpReadsWell() {
        assertThat(run("brakes --help")).isEqualTo(ExitCode.DONE);
        assertThat(results.toString()).contains("--bias=PERCENT").doesNotContain("%%");
    }

    @Test
    void aSumMustBeNamed() {
        assertThat(run("")).isEqualTo(ExitCode.USAGE);
        assertThat(messages.toString()).contains("A sum is missing", "gearing", "top-speed");
    }

    private int run(String arguments) {
        CommandLine program = new CommandLine(new SumsCommand())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(new PrintWriter(results, true))
                .setErr(new PrintWriter(messages, true))
                .setExecutionExceptionHandler(new Failures(Map.of()));
        String[] words = Stream.of(arguments.split(" ", -1))
                .filter(word -> !word.isEmpty())
                .map(word -> word.equals("SHEET") ? sheet.toString() : word)
                .toArray(String[]::new);
        return program.execute(words);
    }
}
