package setwright.app.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.predict.WrongChange;
import setwright.logbook.problem.LogbookProblem;

final class SetupDeskTest {
    private static final Optional<String> CAR = Optional.of("Heron");

    @TempDir
    private Path folder;

    private SetupDesk setups;

    @BeforeEach
    void open() throws IOException {
        setups = new Fixture(folder).setups;
    }

    private int fitted() {
        return setups.show(CAR, OptionalInt.empty()).setup().number();
    }

    private void change(String words) {
        setups.change(CAR, List.of(words), "", "");
    }

    @Test
    void undoWalksBackThroughTheChangesAndStopsAtTheFirst() {
        change("front_bar=8");
        change("rear_bar=5");
        change("rear_bar=4"); // the same values as the second version
        assertThat(fitted()).isEqualTo(2);

        setups.undo(CAR);
        assertThat(fitted())
                .as("what was on the car before, not what version 2 was made from")
                .isEqualTo(3);
        setups.undo(CAR);
        assertThat(fitted()).isEqualTo(2);
        change("front_bar=7");
        setups.undo(CAR);
        assertThat(fitted()).isEqualTo(2);
        setups.undo(CAR);
        assertThat(fitted()).isEqualTo(1);
        assertThatThrownBy(() -> setups.undo(CAR))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("nothing was changed on Heron that could be undone");
        assertThat(fitted()).isEqualTo(1);
    }

    @Test
    void aVersionSaysWhyAndWhatItChanged() {
        SetupStep step =
                setups.change(CAR, List.of("front_bar=8", "front_camber=-2.75"), "more front", "the plate moves both");
        assertThat(step.words())
                .isEqualTo("Heron: setup 2: front_bar 9 to 8 position, front_camber -3 to -2.75 deg (more front).");
        assertThat(step.setup().together()).isEqualTo("the plate moves both");
        assertThat(setups.change(CAR, List.of("front_bar=9", "front_camber=-3"), "", "")
                        .words())
                .isEqualTo("Heron: setup 1 is on the car again.");
        assertThat(setups.compare(CAR, 1, OptionalInt.of(2)).items()).hasSize(2);
    }

    @Test
    void wordsAndNumbersNobodyModelsCanBeChangedToo() throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("words.yaml"),
                Fixture.text()
                        + "  front_tyre_compound: {value: medium, choices: [soft, medium]}\n"
                        + "  other_duct: {value: 2, unit: step, min: 0, max: 4, step: 1}\n");
        setups.enter(sheet, Optional.of("Bittern"), "", "");
        Optional<String> car = Optional.of("Bittern");

        assertThat(setups.change(car, List.of("front_tyre_compound=soft", "other_duct=+1step"), "", "")
                        .words())
                .contains("front_tyre_compound medium to soft", "other_duct 2 to 3 step");
        assertThatThrownBy(() -> setups.change(car, List.of("front_tyre_compound=hard"), "", ""))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("may be soft, medium");
        assertThatThrownBy(() -> setups.change(car, List.of("front_tyre_compound=soft"), "", ""))
                .isInstanceOf(WrongChange.class)
                .hasMessageContaining("is soft already");
    }

    @Test
    void theFuelOfARunIsNoFactOfTheCar() throws IOException {
        assertThat(Fixture.text()).contains("fuel_start_kg");
        Path sheet = Files.writeString(
                folder.resolve("less.yaml"),
                Fixture.text().replaceFirst("fuel_start_kg: [0-9.]+", "fuel_start_kg: 11"));
        assertThat(setups.enter(sheet, CAR, "", "").words())
                .contains("fuel_start_kg")
                .contains("to 11");
    }
}
