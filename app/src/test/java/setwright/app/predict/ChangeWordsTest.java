package setwright.app.predict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.example.Example;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.intake.car.CarSheetReader;

final class ChangeWordsTest {
    private final ChangeWords words = new ChangeWords(Example.answer().car());

    @ParameterizedTest
    @CsvSource({
        "front_bar=4, front_bar, 5, 4",
        "front_bar=+1step, front_bar, 5, 6",
        "front_bar=-4steps, front_bar, 5, 1",
        "front_bar=+2 steps, front_bar, 5, 7",
        "front_camber=-3.2, front_camber, -3.4, -3.2",
        "front_camber=-1step, front_camber, -3.4, -3.6",
        "front_camber=+1step, front_camber, -3.4, -3.2",
        "front_camber=-5, front_camber, -3.4, -5", // the end of the range, steps apart as well
        "rear_tyre_pressure=+3steps, rear_tyre_pressure, 1.86, 1.92", // no rounding of binary fractions
        "'rear_tyre_pressure=1,9', rear_tyre_pressure, 1.86, 1.9",
        "front_spring=205.0, front_spring, 200, 205"
    })
    void valuesAndStepsAreRead(String word, String item, double from, double to) {
        assertThat(words.read(List.of(word))).containsExactly(new SetupChange(item, from, to));
    }

    /** Item, value, range and step stand in the message, and what to write instead. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "front_bar | is no change: expected ITEM=VALUE",
                "=4 | is no change: expected ITEM=VALUE",
                "front_bra=4 | no item \"front_bra\". Is front_bar meant?",
                "ballast=4 | no item \"ballast\". It has front_bar, rear_bar",
                "front_bar=12 | front_bar=12: 12 is out of range. front_bar is at 5 position and goes from 1 to 11 position in steps of 1.",
                "front_bar=-1 | -1 is out of range. front_bar is at 5 position and goes from 1 to 11 position in steps of 1. For steps write front_bar=-1step.",
                "front_bar=+1 | a value or steps? Write front_bar=1 for the value or front_bar=+1step for steps.",
                "front_bar=2steps | more or less? Write +2steps or -2steps.",
                "front_bar=+0steps | \"0\" is no number of whole steps",
                "front_bar=+1.5steps | \"1.5\" is no number of whole steps",
                "front_bar=+7steps | too far. front_bar is at 5 position and goes from 1 to 11 position in steps of 1.",
                "front_bar=+999999999999steps | no number of whole steps",
                "front_bar=soft | \"soft\" is neither a number nor steps. front_bar is at 5",
                "front_bar= | neither a number nor steps",
                "front_bar=NaN | neither a number nor steps",
                "front_bar=5 | front_bar is at 5 already. Name another value, from 1 to 11 in steps of 1.",
                "front_camber=-3.5 | -3.5 lies between two steps. front_camber is at -3.4 deg and goes from -5 to -1 deg in steps of 0.2; the nearest is -3.6.",
                "front_camber=-2.7 | the nearest are -2.8 or -2.6.",
                "rear_wing=7.5 | 7.5 lies between two steps. rear_wing is at 7 step and goes from 1 to 14 step in steps of 1; the nearest is 8."
            })
    void whatCannotBeTurnedIsSaid(String word, String message) {
        assertThatThrownBy(() -> words.read(List.of(word)))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining(message);
    }

    @Test
    void severalItemsAreOneChangeAndNoneIsNamedTwice() {
        assertThat(words.read(List.of("front_bar=4", "rear_bar=-1step")))
                .containsExactly(new SetupChange("front_bar", 5.0, 4.0), new SetupChange("rear_bar", 5.0, 4.0));
        assertThatThrownBy(() -> words.read(List.of("front_bar=4", "front_bar=3")))
                .hasMessageContaining("front_bar is named twice");
    }

    /** Six items both ways; the rear bar stands at the end of its range. */
    @Test
    void everyItemIsTurnedOneStepEachWayAsFarAsItGoes() {
        assertThat(words.oneStepEach())
                .hasSize(11)
                .allMatch(candidate -> candidate.size() == 1)
                .contains(List.of(new SetupChange("rear_tyre_pressure", 1.86, 1.84)))
                .doesNotContain(List.of(new SetupChange("rear_bar", 5.0, 6.0)));
    }

    /** Nothing known is not the same as no effect. */
    @Test
    void whatIsNotModelledIsNotPredicted(@TempDir Path folder) throws IOException {
        ChangeWords unknown = new ChangeWords(sheet(folder, """
                setup:
                  front_bar: {value: 4, unit: position, min: 1, max: 9, step: 1}
                  other_flap: {value: 3, unit: hole, min: 1, max: 5, step: 1}
                  rear_wing: {value: 4, unit: step, min: 1, max: 9, step: 1}
                """));
        assertThat(unknown.oneStepEach())
                .containsExactly(
                        List.of(new SetupChange("rear_wing", 4.0, 5.0)),
                        List.of(new SetupChange("rear_wing", 4.0, 3.0)));
        assertThatThrownBy(() -> unknown.read(List.of("front_bar=5")))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("Give bar_wheel_rate_front_N_per_mm");
        assertThatThrownBy(() -> unknown.read(List.of("other_flap=4")))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("other_flap does to a car is not modelled");
    }

    @Test
    void aSheetWithoutAnItemThatIsModelledIsRefused(@TempDir Path folder) throws IOException {
        ChangeWords unknown = new ChangeWords(sheet(folder, """
                setup:
                  other_flap: {value: 3, unit: hole, min: 1, max: 5, step: 1}
                """));
        assertThatThrownBy(unknown::oneStepEach)
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("other_flap does to a car is not modelled");
    }

    private static CarSheet sheet(Path folder, String text) throws IOException {
        return CarSheetReader.read(Files.writeString(folder.resolve("car.yaml"), text));
    }
}
