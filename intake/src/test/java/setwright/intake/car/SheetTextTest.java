package setwright.intake.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import setwright.intake.car.SheetText.Difference;

final class SheetTextTest {
    private static final String SHEET = """
            # Heron, as weighed in March
            mass_with_driver_kg: 620   # with the small tank
            gear_ratios: [2.5, 1.9, 1.5]
            setup:
              front_bar: {value: 4, unit: position, min: 1, max: 9, step: 1}  # value: of the blade
              brake_bias_front:
                unit: %
                min: 50
                max: 70
                step: 0.5
                value: 58.5
              rear_tyre_compound: soft
              front_tyre_compound: {value: "medium", choices: [medium, soft]}
            """;

    private static final SheetText TEXT = new SheetText(SHEET);

    @Test
    void changesTheValueAndNothingElse() {
        assertThat(TEXT.with("front_bar", "5").text())
                .isEqualTo(SHEET.replace("value: 4,", "value: 5,").replace("unit: %", "unit: \"%\""));
        assertThat(TEXT.with("brake_bias_front", "59").text())
                .contains("value: 59\n  rear_tyre")
                .contains("# with the small tank");
        assertThat(TEXT.with("rear_tyre_compound", "hard").text()).contains("rear_tyre_compound: hard\n");
        assertThat(TEXT.with("front_tyre_compound", "soft").text()).contains("{value: soft, choices: [medium, soft]}");
        assertThat(CarSheetReader.parse("x", TEXT.with("brake_bias_front", "59").text())
                        .item("brake_bias_front")
                        .orElseThrow()
                        .value())
                .isEqualTo(59.0);
    }

    @Test
    void charactersBeyondTheBasicPlaneDoNotMoveThePlace() {
        String race = new String(Character.toChars(0x1F3C1));
        SheetText text = new SheetText("# " + race + race + "\n" + SHEET);
        assertThat(text.with("front_bar", "5").text()).contains("front_bar: {value: 5, unit: position");
        assertThat(new SheetText("a: 1e999999999\n").to(new SheetText("a: 1e999999999\n")))
                .isEmpty();
    }

    @Test
    void refusesAnItemThatIsNotThere() {
        assertThatThrownBy(() -> TEXT.with("rear_bar", "5"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rear_bar");
    }

    @Test
    void tellsWhatDiffersWhateverItLooksLike() {
        SheetText other = new SheetText(SHEET.replace("620 ", "625.0 ")
                .replace("# Heron, as weighed in March\n", "")
                .replace("value: 4,", "value: 4.0,")
                .replace("58.5", "59")
                .replace("1.9, ", "")
                .replace("  rear_tyre_compound: soft\n", ""));

        assertThat(TEXT.to(other))
                .containsExactly(
                        new Difference("gear_ratios.2", "1.9", "1.5", false),
                        new Difference("gear_ratios.3", "1.5", "", false),
                        new Difference("mass_with_driver_kg", "620", "625", false),
                        new Difference("brake_bias_front", "58.5", "59", true),
                        new Difference("rear_tyre_compound", "soft", "", true));
        assertThat(TEXT.to(TEXT)).isEmpty();
    }
}
