package setwright.app.scoreboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Corner.Direction;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;

/** The rules for scoring, on answers made up for them. */
final class RulesTest {

    private static final String TRUTH = """
            {"lap_length_m": 1000, "unknown_field": 1,
             "label": {"sign": "none", "kind": "back_to_back", "weak": false},
             "changed_from_balanced": {"front_bar": {"balanced": 4, "value": 9}},
             "back_to_back": {"verdict": "better", "changed": {"front_bar": {"A": 9, "B": 4.0}},
                              "balance_delta_B_minus_A_deg": {"low": {"mid": -0.25, "exit": null}}},
             "stints": [{"file": "stint1.csv", "setup": "A", "laps": []}, {"file": "stint2.csv", "setup": "B", "laps": []}],
             "corners": [
               {"corner": 1, "direction": "left", "s_apex_m": 20,
                "phase_bounds_m": {"braking": null, "entry": [-30, 10], "exit": [10, 60]}},
               {"corner": 2, "direction": "right", "s_apex_m": 500, "phase_bounds_m": {"mid": [450, 550]}}]}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "trail_brake, BRAKE_RELEASE, LOW, true",
        "trail_brake, BRAKE_APPLICATION, LOW, false",
        "trail_brake, TURN_IN, LOW, false", // no pass shows the brake still on
        "brake, BRAKE_APPLICATION, ALL, true",
        "throttle, THROTTLE_PICK_UP, ALL, true",
        "throttle, THROTTLE_LIFT, ALL, true",
        "throttle, NONE, ALL, false",
        "entry_speed, TURN_IN, ALL, true",
        "entry_speed, BRAKE_RELEASE, ALL, true",
        "bump, BUMP, ALL, true",
        "steady, NONE, LOW, true",
        "speed, NONE, HIGH, true",
        "speed, NONE, ALL, false",
    })
    void triggersCountAsTheCasesSay(String word, Trigger trigger, SpeedRange speed, boolean right) {
        assertThat(TruthTerms.trigger(word, List.of()).orElseThrow().test(finding(trigger, speed)))
                .isEqualTo(right);
    }

    @ParameterizedTest
    @CsvSource({"wear", "rpm", "none"})
    void otherTriggersAreNotCounted(String word) {
        assertThat(TruthTerms.trigger(word, List.of())).isEmpty();
    }

    @Test
    void cornersAreMatchedByPlaceAcrossTheStartLineWhateverTheirNumber() throws Exception {
        CornerMatch match = CornerMatch.of(
                truth(),
                List.of(
                        corner(1, Direction.RIGHT, 300),
                        corner(2, Direction.RIGHT, 514),
                        corner(3, Direction.LEFT, 990)));

        assertThat(match.realNumbers(List.of(1, 2, 3))).containsExactly(1, 2);
        assertThat(match.real(3).orElseThrow().corner()).isEqualTo(1);
        assertThat(match.extra()).containsExactly(1);
        assertThat(match.inPlace()).as("corner 1 has another number").containsExactly(2);
    }

    @Test
    void anApexTooFarAwayOrACornerTheOtherWayIsNotInPlace() throws Exception {
        CornerMatch match =
                CornerMatch.of(truth(), List.of(corner(1, Direction.RIGHT, 20), corner(2, Direction.RIGHT, 516)));

        assertThat(match.inPlace()).isEmpty();
        assertThat(match.misses()).contains("1: none", "2: as 2, apex +16 m");
    }

    @Test
    void onlyTheStintWithEveryItemAtItsBalancedValueIsBalanced() throws Exception {
        Truth truth = truth();

        assertThat(truth.stints()).extracting(truth::isBalanced).containsExactly(false, true);
        assertThat(truth.backToBack().balanceDeltaSecondMinusFirstDeg().get("low"))
                .containsEntry("mid", -0.25);
    }

    @Test
    void agreementIsPearsonsWithMeanAndSpreadOfTheError() {
        Agreement same = Agreement.of(List.of(pair(0, 1), pair(1, 2), pair(2, 3)));

        assertThat(same.correlation()).isEqualTo(1.0);
        assertThat(same.offset()).isEqualTo(1.0);
        assertThat(same.rms()).isEqualTo(1.0);
        assertThat(Agreement.of(List.of(pair(0, 1), pair(0, 2), pair(0, 3))).correlation())
                .isNaN();
    }

    private static Agreement.Pair pair(double truth, double answer) {
        return new Agreement.Pair(truth, answer);
    }

    private Truth truth() throws IOException {
        return Truth.read(Files.writeString(folder.resolve("truth"), TRUTH));
    }

    private static Corner corner(int number, Direction direction, double apexM) {
        return new Corner(number, direction, apexM - 50, apexM - 20, apexM, apexM + 20, apexM + 50);
    }

    private static Finding finding(Trigger trigger, SpeedRange speed) {
        return new Finding(
                Phase.ENTRY,
                speed,
                BalanceSign.OVERSTEER,
                trigger,
                Map.of(trigger, 1.0),
                Finding.Cause.CAR,
                List.of(1),
                1.0,
                true,
                1.0,
                0.01,
                0.005,
                0.015,
                new Finding.Price(0.1, 0.0, 0.2),
                List.of());
    }
}
