package setwright.intake.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.intake.problem.InputProblem;

/** Cars that cannot be: each gets one message with file, line, key, value, what is allowed and what to do. */
final class ImpossibleSheetsTest {
    private static final String SHEET = """
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
            gear_ratios: [2.7, 2.0, 1.6, 1.3]
            rev_limit_rpm: 7700
            idle_rpm: 900
            engine_power_kW: 240
            engine_torque_curve: [[3000, 300], [5500, 380], [7000, 330]]
            roll_centre_height_front_m: 0.04
            unsprung_mass_rear_kg: 85
            yaw_inertia_kg_m2: 1900
            anti_dive_percent: 20
            drag_area_m2: 0.9
            damper_rate_front_Ns_per_m: {bump_low: 6000, bump_high: 2500, rebound_low: 9000, rebound_high: 4000, knee_m_per_s: 0.05, per_click: 0.04}
            setup:
              front_spring: {value: 200, unit: N/mm, min: 120, max: 275, step: 5}
              front_ride_height: {value: 62, unit: mm, min: 50, max: 80, step: 1}
              rear_ride_height: {value: 72, unit: mm, min: 55, max: 395, step: 1}
              brake_bias_front: {value: 69, unit: %, min: 58, max: 80, step: 0.5}
              rear_toe: {value: 0.15, unit: deg, min: -0.1, max: 0.4, step: 0.05}
              final_drive: {value: 3.8, unit: ratio, min: 3.3, max: 4.6, step: 0.1}
              front_bump: {value: 12, unit: clicks, min: 1, max: 26, step: 1}
              gear_1: {value: 2.7, unit: ratio, min: 2.2, max: 3.2, step: 0.01}
              gear_2: {value: 2.0, unit: ratio, min: 1.8, max: 2.4, step: 0.01}
              front_tyre_compound: {value: soft, choices: [soft, medium]}
              fuel: {value: 40, unit: kg, min: 5, max: 80, step: 1}
              front_bar: {value: 3, unit: position, min: 1, max: 9, step: 1}
            """;

    @Test
    void theSheetAsItStandsIsPossible() {
        assertThat(CarSheetReader.parse("car.yaml", SHEET).setup()).hasSize(11);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // what stands there | what is put there | line | key | found | allowed or advised
                "wheelbase_m: 2.6 | wheelbase_m: 0 | 5 | wheelbase_m | 0 | from 0.8 to 5 m",
                "wheelbase_m: 2.6 | wheelbase_m: 2600 | 5 | wheelbase_m | 2600 | from 0.8 to 5 m",
                "front_weight_share: 0.48 | front_weight_share: 1.4 | 4 | front_weight_share | 1.4 | from 0.2 to 0.8",
                "front_weight_share: 0.48 | front_weight_share: 140% | 4 | front_weight_share | 140% | a number",
                "mass_with_driver_kg: 1200 | mass_with_driver_kg: -1200 | 2 | mass_with_driver_kg | -1200 | from 100 to 4000 kg",
                "centre_of_mass_height_m: 0.44 | centre_of_mass_height_m: 0.9 | 8 | centre_of_mass_height_m | 0.9 | 0.800 m",
                "2.7, 2.0, 1.6, 1.3] | 1.3, 1.6, 2.0, 2.7] | 11 | gear_ratios | 1.6 | less than 1.3",
                "[2.7, 2.0, 1.6, 1.3] | [2.7, 0, 1.6] | 11 | gear_ratios | 0 | above 0",
                "rev_limit_rpm: 7700\\nidle_rpm: 900 | rev_limit_rpm: 5000\\nidle_rpm: 5500 | 13 | idle_rpm | 5500 | which is 5000",
                "rev_limit_rpm: 7700 | rev_limit_rpm: 77 | 12 | rev_limit_rpm | 77 | from 1000 to 25000 rpm",
                "engine_power_kW: 240 | engine_power_kW: 400 | 14 | engine_power_kW | 400 | which is 242 kW",
                "engine_power_kW: 240 | engine_power_kW: 0 | 14 | engine_power_kW | 0 | from 3 to 1500 kW",
                "[5500, 380], [7000, 330] | [7000, 330], [5500, 380] | 15 | engine_torque_curve | 5500 | above 7000",
                "[5500, 380] | [380, 5500] | 15 | engine_torque_curve | 380 | above 3000",
                "[5500, 380] | [5500, -380] | 15 | engine_torque_curve | -380 | above 0",
                "[5500, 380] | 5500 | 15 | engine_torque_curve | '' | pairs of engine speed",
                "[[3000, 300], [5500, 380], [7000, 330]] | [[7000, 330]] | 15 | engine_torque_curve | '' | at least two points",
                "roll_centre_height_front_m: 0.04 | roll_centre_height_front_m: 0.5 | 16 | roll_centre_height_front_m | 0.5 | below the centre of mass",
                "roll_centre_height_front_m: 0.04 | roll_centre_height_front_m: 40 | 16 | roll_centre_height_front_m | 40 | from -0.3 to 0.6 m",
                "unsprung_mass_rear_kg: 85 | unsprung_mass_rear_kg: 1300 | 17 | unsprung_mass_rear_kg | 1300 | from 1 to 500 kg",
                "mass_with_driver_kg: 1200 | mass_with_driver_kg: 160 | 17 | unsprung_mass_rear_kg | 85 | which is 83 kg",
                "yaw_inertia_kg_m2: 1900 | yaw_inertia_kg_m2: 190 | 18 | yaw_inertia_kg_m2 | 190 | from 405 to 5062",
                "anti_dive_percent: 20 | anti_dive_percent: 120 | 19 | anti_dive_percent | 120 | from 0 to 100 %",
                "centre_of_mass_height_m: 0.44 | centre_of_mass_height_m: 0.1\\nunsprung_mass_front_kg: 400 | 8 | centre_of_mass_height_m | 0.1 | above 0.133 m",
                "anti_dive_percent: 20 | bar_wheel_rate_front_N_per_mm: {base: 5, per_position: -1} | 19 | bar_wheel_rate_front_N_per_mm | -1 | at position 9 it is -4.0 N/mm",
                "drag_area_m2: 0.9 | drag_area_m2: -0.9 | 20 | drag_area_m2 | -0.9 | from 0.1 to 5",
                "bump_low: 6000 | bump_low: -6000 | 21 | damper_rate_front_Ns_per_m.bump_low | -6000 | from 50 to 100000",
                "knee_m_per_s: 0.05, | '' | 21 | damper_rate_front_Ns_per_m.knee_m_per_s | '' | Add the key",
                "value: 200, unit: N/mm, min: 120 | value: -200, unit: N/mm, min: -250 | 23 | setup.front_spring.value | -200 | from 1 to 2000 N/mm",
                "unit: N/mm | unit: bananas | 23 | setup.front_spring.unit | bananas | N/mm, N/m, kgf/mm, lbf/in",
                "unit: N/mm | unit: Nmm | 23 | setup.front_spring.unit | Nmm | Did you mean 'N/mm'",
                "unit: N/mm | unit: bar | 23 | setup.front_spring.unit | bar | N/mm, N/m, kgf/mm, lbf/in",
                "min: 120, max: 275 | min: 275, max: 120 | 23 | setup.front_spring.min | 275 | Swap them",
                "value: 200 | value: 300 | 23 | setup.front_spring.value | 300 | min 120 to max 275",
                "max: 275, step: 5 | max: 275, step: 0 | 23 | setup.front_spring.step | 0 | above 0",
                "max: 275, step: 5 | max: 275, step: 500 | 23 | setup.front_spring.step | 500 | no larger than the range",
                "front_spring: | front_sprung: | 23 | setup.front_sprung | '' | Did you mean 'front_spring'",
                "front_spring: | flux_capacitor: | 23 | setup.flux_capacitor | '' | begins with 'other_'",
                "value: 62 | value: -5 | 24 | setup.front_ride_height.value | -5 | from the ground",
                "value: 62, unit: mm, min: 50 | value: 62, unit: mm, min: -50 | 24 | setup.front_ride_height.min | -50 | from 1 to 400 mm",
                "value: 62, unit: mm, min: 50, max: 80 | value: 17.5, unit: in, min: 1, max: 20 | 24 | setup.front_ride_height.value | 17.5 | in",
                "value: 72, unit: mm | value: 350, unit: mm | 25 | setup.rear_ride_height | 350 | from 1 to 289 mm",
                "value: 69, unit: % | value: 690, unit: % | 26 | setup.brake_bias_front.value | 690 | from 0 to 100 %",
                "value: 69, unit: % | value: 0.69, unit: share | 26 | setup.brake_bias_front.min | 58 | from 0 to 1 share",
                "value: 0.15 | value: 40 | 27 | setup.rear_toe.value | 40 | from -3 to 3 deg",
                "value: 3.8 | value: 0 | 28 | setup.final_drive.value | 0 | from 0.5 to 15",
                "front_tyre_compound: | front_bump_low: {value: 1}\\n  front_tyre_compound: | 32 | setup.front_bump_low | '' | either front_bump",
                "gear_2: {value: 2.0 | gear_2: {value: 2.1 | 31 | setup.gear_2 | 2.1 | the same as in gear_ratios",
                "value: soft | value: hard | 32 | setup.front_tyre_compound.value | hard | soft, medium",
                "{value: soft, choices: [soft, medium]} | '' | 32 | setup.front_tyre_compound | '' | a word",
                "fuel: {value: 40 | fuel: {value: 50 | 33 | setup.fuel | 50 | the same as in fuel_start_kg"
            })
    void oneMessageSaysWhatIsWrong(String good, String bad, long line, String key, String found, String allowed) {
        String text = SHEET.replace(good.replace("\\n", "\n"), bad.replace("\\n", "\n"));
        assertThat(text).isNotEqualTo(SHEET);
        InputProblem problem = catchThrowableOfType(InputProblem.class, () -> CarSheetReader.parse("car.yaml", text));
        assertThat(problem).as(bad).isNotNull();
        assertThat(problem.getMessage()).startsWith("car.yaml, line " + line + ", '" + key + "': expected ");
        assertThat(problem.getMessage()).contains(allowed);
        assertThat(problem.value().orElse("")).isEqualTo(found);
        assertThat(problem.advice()).isNotEmpty();
    }
}
