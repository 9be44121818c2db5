package setwright.app.car;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
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
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import setwright.app.command.CarCommand;
import setwright.app.command.ExitCode;
import setwright.app.command.Failures;
import setwright.app.text.CarText;
import setwright.app.text.Paint;
import setwright.app.text.Terminal;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.figures.UndersteerModel;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code car check} from the file to what is printed. */
final class CarCheckTest {
    private static final String FULL = """
            description: a club racer
            driven_axle: rear
            mass_with_driver_kg: 1200
            fuel_start_kg: 40
            front_weight_share: 0.48
            wheelbase_m: 2.6
            track_front_m: 1.6
            track_rear_m: 1.6
            centre_of_mass_height_m: 0.44
            steering_ratio: 14
            tyre_radius_m: 0.33
            gear_ratios: [2.7, 2.0, 1.6, 1.3, 1.1]
            rev_limit_rpm: 7700
            motion_ratio_front: 0.72
            motion_ratio_rear: 0.76
            bar_wheel_rate_front_N_per_mm: {base: 9.0, per_position: 3.6}
            bar_wheel_rate_rear_N_per_mm: {base: 3.5, per_position: 2.3}
            downforce: moderate
            engine_power_kW: 240
            damper_rate_front_Ns_per_m: {bump_low: 6000, bump_high: 2500, rebound_low: 9000, rebound_high: 4000, knee_m_per_s: 0.05}
            damper_rate_rear_Ns_per_m: {bump_low: 6000, bump_high: 2500, rebound_low: 9000, rebound_high: 4000, knee_m_per_s: 0.05}
            setup:
              front_spring: {value: 200, unit: N/mm, min: 120, max: 275, step: 5}
              rear_spring: {value: 170, unit: N/mm, min: 100, max: 255, step: 5}
              front_bar: {value: 5, unit: position, min: 1, max: 11, step: 1}
              rear_bar: {value: 1, unit: position, min: 1, max: 11, step: 1}
              front_ride_height: {value: 62, unit: mm, min: 50, max: 80, step: 1}
              rear_ride_height: {value: 72, unit: mm, min: 55, max: 95, step: 1}
              brake_bias_front: {value: 60, unit: %, min: 58, max: 80, step: 0.5}
              final_drive: {value: 3.8, unit: ratio, min: 3.3, max: 4.6, step: 0.1}
              front_tyre_compound: {value: soft, choices: [soft, medium]}
              other_nose: long
            """;
    private static final String BARE = "description: some car\nwheelbase_m: 2.6\n";

    private static Schema schema;

    @TempDir
    private Path folder;

    private final StringWriter results = new StringWriter();
    private final StringWriter messages = new StringWriter();

    @BeforeAll
    static void readSchema() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("../docs/car-check.schema.json")), InputFormat.JSON);
    }

    private int run(String sheet, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("car.yaml"), sheet);
        CommandLine program = new CommandLine(new CarCommand())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(Map.of()))
                .setOut(new PrintWriter(results))
                .setErr(new PrintWriter(messages));
        List<String> arguments = new java.util.ArrayList<>(List.of("check", file.toString()));
        arguments.addAll(List.of(options));
        return program.execute(arguments.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {FULL, BARE})
    void jsonKeepsToItsSchema(String sheet) throws IOException {
        assertThat(run(sheet, "--json")).isEqualTo(ExitCode.DONE);
        List<Error> faults = schema.validate(results.toString(), InputFormat.JSON);
        assertThat(faults).isEmpty();
    }

    /** Worked out by hand from the sheet. */
    @ParameterizedTest
    @CsvSource({
        "/figures/mass_kg, 1240",
        // 1240 kg * 9.80665 * 0.48
        "/figures/front/load_n, 5836.9",
        // 200 * 0.72^2
        "/figures/front/wheel_rate_n_per_mm, 103.68",
        // b / L + h / L = 0.48 + 0.44 / 2.6
        "/figures/brakes/ideal_front_share_1g, 0.6492",
        // (0.60 - 0.48) * 2.6 / 0.44
        "/figures/brakes/both_lock_together_g, 0.7091",
        // atan(10 mm / 2600 mm)
        "/figures/rake_deg, 0.2204",
        // 7700 rpm * 2 pi / 60 * 0.33 m / (2.7 * 3.8) * 3.6
        "/figures/gears/0/at_limiter_km_h, 93.3681",
        // 103.68 N/mm * 1.6^2 / 2 * pi / 180
        "/figures/front/roll_stiffness_springs_nm_per_deg, 2316.25",
        // (9.0 + 5 * 3.6) N/mm, as above
        "/figures/front/roll_stiffness_bar_nm_per_deg, 603.19"
    })
    void figuresFollowFromTheSheet(String path, double expected) throws IOException {
        run(FULL, "--json");
        double value = json().at(path).asDouble();
        assertThat(value).isCloseTo(expected, org.assertj.core.api.Assertions.within(5.0e-5 * Math.abs(expected)));
    }

    @Test
    void textTellsAnEngineerWhatHeLooksFor() throws IOException {
        assertThat(run(FULL)).isEqualTo(ExitCode.DONE);
        assertThat(results.toString())
                .contains(
                        "a club racer",
                        "rear_bar stands at the low end of its range",
                        "the rear axle locks first at 1 g",
                        "ride frequency",
                        "damping ratio, slow bump",
                        "lateral load transfer at 1 g",
                        "Roll gradient",
                        "by power against",
                        "limiter at, km/h",
                        "engine_power_kW",
                        "soft  of soft, medium",
                        "not modelled",
                        "unsprung_mass_front_kg",
                        "spring: Spring rate.",
                        "to be checked by a qualified person");
        assertThat(results.toString().lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void speedsFollowTheUnits() throws IOException {
        run(FULL, "--units", "imperial");
        assertThat(results.toString()).contains("limiter at, mph").doesNotContain("km/h");
    }

    @Test
    void aBareSheetSaysWhatIsMissing() throws IOException {
        assertThat(run(BARE)).isEqualTo(ExitCode.DONE);
        assertThat(results.toString())
                .contains(
                        "Assumed",
                        "- setup is not given",
                        "- What the first table marks as assumed",
                        "Ride frequencies need front_spring",
                        "Speeds per gear need gear_ratios")
                .doesNotContain("NaN", "Look at twice", "- mass_with_driver_kg");
        assertThat(results.toString().lines().filter(line -> line.endsWith("assumed")))
                .as("rows of the car that the sheet does not give")
                .hasSize(12);
    }

    @Test
    void anImpossibleSheetIsOneLineAndPrintsNothingElse() throws IOException {
        assertThat(run(FULL.replace("wheelbase_m: 2.6", "wheelbase_m: 0"))).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(results.toString()).isEmpty();
        assertThat(messages.toString().lines()).hasSize(1);
        assertThat(messages.toString()).contains("car.yaml, line 6, 'wheelbase_m'", "from 0.8 to 5 m", "\"0\"");
    }

    /** Whatever stands on a sheet, the answer is either one message or figures that are numbers. */
    @Test
    void anySheetIsEitherRefusedOrAnswered() {
        long seed = 20_261_125L;
        RandomGenerator random = new SplittableRandom(seed);
        int answered = 0;
        for (int i = 0; i < 1000; i++) {
            String sheet = RandomSheets.next(random);
            try {
                CarCheck check = CarCheck.of(CarSheetReader.parse("car.yaml", sheet), UndersteerModel.NONE);
                String text =
                        CarText.write(check, Figures.forTerminal(UnitSystem.METRIC), new Terminal(80, Paint.PLAIN));
                assertThat(text).as("seed " + seed + ", sheet\n" + sheet).doesNotContain("NaN", "Infinity");
                answered++;
            } catch (InputProblem problem) {
                assertThat(problem.getMessage()).startsWith("car.yaml, line");
            }
        }
        assertThat(answered).as("sheets that are possible, seed " + seed).isGreaterThan(100);
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(results.toString());
    }
}
