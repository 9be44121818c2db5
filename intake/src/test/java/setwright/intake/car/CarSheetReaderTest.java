package setwright.intake.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.intake.problem.InputProblem;

class CarSheetReaderTest {
    private static final String SHEET = """
            # a club racer
            description: small hatch
            driven_axle: front
            mass_with_driver_kg: 1000
            fuel_start_kg: 20
            front_weight_share: 0.6
            wheelbase_m: 2.5
            track_front_m: 1.5
            track_rear_m: 1.48
            centre_of_mass_height_m: 0.5
            steering_ratio: 15
            tyre_radius_m: 0.3
            gear_ratios: [3.1, 2.0, 1.4, 1.1]
            rev_limit_rpm: 7000
            brake_pressure_max_bar: 80
            motion_ratio_front: 0.9
            motion_ratio_rear: 0.8
            bar_wheel_rate_front_N_per_mm: {base: 5, per_position: 3.5}
            downforce: none
            setup:
              front_spring: {value: 90, unit: N/mm, min: 50, max: 140, step: 5}
              brake_bias_front: {value: 70, unit: %, min: 60, max: 80, step: 0.5}
            """;
    private static final double ROUND_OFF = 1.0e-9;

    @Test
    void valuesComeOutInSi() {
        CarSheet car = CarSheetReader.parse("car.yaml", SHEET);
        assertThat(car.drivenAxle()).isEqualTo(DrivenAxle.FRONT);
        assertThat(car.downforce()).isEqualTo(Downforce.NONE);
        assertThat(car.revLimitRadPerS().orElseThrow()).isCloseTo(733.0382858376184, within(ROUND_OFF));
        assertThat(car.brakePressureMaxPa().orElseThrow()).isEqualTo(8.0e6);
        assertThat(car.barFront().orElseThrow().perPositionNPerM()).isEqualTo(3500.0);
        assertThat(car.barRear()).isEmpty();
        assertThat(car.gearRatios()).containsExactly(3.1, 2.0, 1.4, 1.1);
        assertThat(car.item("brake_bias_front").orElseThrow().unit()).isEqualTo("%");
        assertThat(car.assumed()).isEmpty();
    }

    @Test
    void whatIsMissingIsAssumedAndSaid() {
        CarSheet car = CarSheetReader.parse("car.yaml", "driven_axle: rear\ndownforce: strong\nwheelbase_m: 2.8\n");
        assertThat(car.wheelbaseM()).isEqualTo(2.8);
        assertThat(car.steeringRatio()).isBetween(8.0, 20.0);
        assertThat(car.assumed())
                .anyMatch(line -> line.startsWith("steering_ratio is not given") && line.contains("strong downforce"))
                .anyMatch(line -> line.startsWith("mass_with_driver_kg"))
                .noneMatch(line -> line.startsWith("wheelbase_m"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wheelbase_m: 2.5 | wheelbase_m: 0 | 7 | a value from 0.8 to 5 m",
                "front_weight_share: 0.6 | front_weight_share: 140 % | 6 | a number",
                "front_weight_share: 0.6 | front_weight_share: 1.4 | 6 | Write 52 % as 0.52",
                "wheelbase_m: 2.5 | wheelbse_m: 2.5 | 7 | Did you mean 'wheelbase_m'",
                "wheelbase_m: 2.5 | wheelbase_m: long | 7 | a number",
                "driven_axle: front | driven_axle: both | 3 | one of front, rear, all",
                "[3.1, 2.0, 1.4, 1.1] | [1.1, 1.4, 2.0] | 13 | ratios that fall",
                "[3.1, 2.0, 1.4, 1.1] | 3.1 | 13 | a list",
                "min: 50, max: 140 | min: 150, max: 140 | 21 | at most max",
                "value: 90 | value: 200 | 21 | from min 50 to max 140",
                "step: 5} | step: 0} | 21 | a step above 0",
                "value: 90, | '' | 21 | a number",
                "max: 140 | maximum: 140 | 21 | Known are",
                "rev_limit_rpm: 7000 | wheelbase_m: 2.6 | 14 | each key once",
                "mass_with_driver_kg: 1000 | mass_with_driver_kg: [1000] | 4 | a number",
                "mass_with_driver_kg: 1000 | mass_with_driver_kg: .nan | 4 | a number",
                "small hatch | *other | 2 | plain values",
                "small hatch | !!java.net.URL [x] | 2 | plain values",
                "{base: 5, per_position: 3.5} | {base: 5} | 18 | a number in N/mm",
                "downforce: none | 'downforce: [' | 21 | keys and values"
            })
    void mistakesAreNamedWithTheirLine(String good, String bad, long line, String message) {
        String text = SHEET.replace(good, bad);
        assertThat(text).isNotEqualTo(SHEET);
        InputProblem problem = catchThrowableOfType(InputProblem.class, () -> CarSheetReader.parse("car.yaml", text));
        assertThat(problem).as(bad).isNotNull();
        assertThat(problem.getMessage()).startsWith("car.yaml").contains(message);
        assertThat(problem.row()).as(problem.getMessage()).hasValue(line);
    }

    @Test
    void setupThatIsNoGroupAndFilesThatAreNoSheets() {
        for (String text : new String[] {
            "setup: fast\n",
            "setup: [1, 2]\n",
            "- a\n- b\n",
            "",
            "just words\n",
            "setup:\n  front_bar: 4\n",
            "a: &x [1]\nb: *x\n"
        }) {
            InputProblem problem =
                    catchThrowableOfType(InputProblem.class, () -> CarSheetReader.parse("car.yaml", text));
            assertThat(problem).as(text).isNotNull();
            assertThat(problem.getMessage()).startsWith("car.yaml").contains("expected");
        }
    }
}
