package setwright.intake.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.car.CarDetail;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
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

    @Test
    void whatAWellInformedUserGivesComesOutInSi() {
        CarSheet car = CarSheetReader.parse("car.yaml", SHEET + """
                  front_tyre_compound: soft
                  rear_tyre_compound: {value: hard, choices: [soft, hard]}
                  other_flap: {value: 2, unit: holes, min: 1, max: 4, step: 1}
                  other_nose: long
                roll_centre_height_rear_m: -0.02
                unsprung_mass_front_kg: 80
                tyre_spring_rate_front_N_per_mm: 250
                bump_stop_rate_rear_N_per_mm: 90
                brake_torque_front_Nm_per_bar: 30
                damper_rate_rear_Ns_per_m:
                  bump_low: 6000
                  bump_high: 2500
                  rebound_low: 9000
                  rebound_high: 4000
                  knee_m_per_s: 0.05
                  per_click: 0.04
                anti_dive_percent: 25
                drag_area_m2: 0.7
                lift_area_front_m2: 0.1
                air_density_kg_m3: 1.17
                engine_torque_curve:
                  - [3000, 150]
                  - [6000, 200]
                engine_braking_torque_Nm: 40
                idle_rpm: 900
                driveline_efficiency: 0.9
                tyre_peak_slip_angle_deg: 6
                tyre_grip: 1.3
                """);
        CarDetail detail = car.detail();
        assertThat(detail.rear().rollCentreHeightM()).hasValue(-0.02);
        assertThat(detail.front().rollCentreHeightM()).isEmpty();
        assertThat(detail.front().unsprungMassKg()).hasValue(80.0);
        assertThat(detail.front().tyreSpringRateNPerM()).hasValue(250_000.0);
        assertThat(detail.rear().bumpStopRateNPerM()).hasValue(90_000.0);
        assertThat(detail.front().brakeTorqueNmPerPa().orElseThrow()).isCloseTo(3.0e-4, within(ROUND_OFF));
        assertThat(detail.rear().damper().orElseThrow())
                .isEqualTo(new CarDetail.Damper(6000, 2500, 9000, 4000, 0.05, OptionalDouble.of(0.04)));
        assertThat(detail.body().antiDiveShare()).hasValue(0.25);
        assertThat(detail.body().yawInertiaKgM2()).isEmpty();
        assertThat(detail.air().dragAreaM2()).hasValue(0.7);
        assertThat(detail.air().downforceFrontM2()).hasValue(0.1);
        assertThat(detail.air().densityKgPerM3()).hasValue(1.17);
        assertThat(detail.engine().torque()).hasSize(2);
        assertThat(detail.engine().torque().get(1).radPerS()).isCloseTo(628.3185307179587, within(ROUND_OFF));
        assertThat(detail.engine().brakingTorqueNm()).hasValue(40.0);
        assertThat(detail.engine().efficiency()).hasValue(0.9);
        assertThat(detail.tyre().peakSlipAngleRad().orElseThrow()).isCloseTo(0.10471975511965977, within(ROUND_OFF));
        assertThat(detail.tyre().grip()).hasValue(1.3);
        assertThat(car.label("front_tyre_compound").orElseThrow().value()).isEqualTo("soft");
        assertThat(car.label("rear_tyre_compound").orElseThrow().choices()).containsExactly("soft", "hard");
        assertThat(car.label("other_nose")).isPresent();
        assertThat(car.item("other_flap").orElseThrow().unit()).isEqualTo("holes");
        assertThat(car.assumed()).isEmpty();
    }

    @Test
    void rangesThatAnItemLacksAreTheUsualOnesAndSaid() {
        CarSheet car = CarSheetReader.parse(
                "car.yaml", "setup:\n  rear_spring: {value: 350}\n  front_tyre_pressure: {value: 25, unit: PSI}\n");
        assertThat(car.item("rear_spring")).contains(new SetupItem("rear_spring", 350, "N/mm", 30, 350, 5));
        assertThat(car.item("front_tyre_pressure"))
                .contains(new SetupItem("front_tyre_pressure", 25, "psi", 17.4, 34.8, 0.29));
        assertThat(car.assumed())
                .anyMatch(line -> line.startsWith("setup.rear_spring lacks unit, min, max, step: 30 to 350 N/mm"))
                .anyMatch(line -> line.startsWith("setup.front_tyre_pressure lacks min, max, step:"));
    }

    @Test
    void gearsAndFuelMayStandAmongTheItems() {
        CarSheet car = CarSheetReader.parse(
                "car.yaml", "setup:\n  gear_1: {value: 2.5}\n  gear_2: {value: 1.8}\n  fuel: {value: 22, unit: kg}\n");
        assertThat(car.gearRatios()).containsExactly(2.5, 1.8);
        assertThat(car.fuelStartKg()).isEqualTo(22.0);
        assertThat(car.assumes("fuel_start_kg")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "practice-01/car.yaml",
                "practice-02/car.yaml",
                "practice-03/car.yaml",
                "practice-04/car.yaml",
                "practice-05/car.yaml",
                "practice-06/car.yaml",
                "practice-07/car.yaml",
                "practice-08/car_stint1.yaml",
                "practice-08/car_stint2.yaml"
            })
    void everyItemOfThePracticeSheetsIsKnown(String name) throws Exception {
        CarSheet car =
                CarSheetReader.read(Path.of(Objects.requireNonNull(getClass().getResource("/cases/" + name), name)
                        .toURI()));
        assertThat(car.setup()).hasSizeGreaterThanOrEqualTo(20).allSatisfy(item -> {
            SetupItemKind kind = SetupCatalogue.find(item.name()).orElseThrow();
            assertThat(kind.unit(item.unit())).isPresent();
        });
        assertThat(car.assumed()).isEmpty();
        assertThat(car.detail()).isEqualTo(CarDetail.NONE);
    }

    @Test
    void everyKeyAndItemIsDescribed() throws Exception {
        String described = Files.readString(Path.of("../docs/car-sheet.md"));
        assertThat(CarSheetReader.keys())
                .allSatisfy(key -> assertThat(described).containsAnyOf("`" + key + "`", key + ":"));
        assertThat(SetupCatalogue.all()).filteredOn(kind -> kind.gear() <= 1).allSatisfy(kind -> {
            assertThat(described).contains("`" + kind.name() + "`");
            kind.units().forEach(unit -> assertThat(described).contains(unit.symbol()));
        });
    }
}
