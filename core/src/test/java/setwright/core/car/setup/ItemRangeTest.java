package setwright.core.car.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.SetupItem;

final class ItemRangeTest {
    /** Steps of a tenth cannot be added in binary: 3.2 and 0.1 make 3.3000000000000003. */
    @ParameterizedTest
    @CsvSource({
        "3.2, 2.9, 4.1, 0.1, 1, 3.3",
        "3.2, 2.9, 4.1, 0.1, 20, 4.1",
        "3.2, 2.9, 4.1, 0.1, -1, 3.1",
        "3.2, 2.9, 4.1, 0.1, -7, 2.9",
        "3.2, 3.2, 3.2, 0.1, 3, 3.2",
        "3.25, 2.9, 4.0, 0.2, 9, 3.85",
        "-1.7, -3.1, -0.5, 0.1, 3, -1.4"
    })
    void goesAsFarAsTheStepsReach(double value, double min, double max, double step, long steps, double expected) {
        SetupItem item = new SetupItem("final_drive", value, "", min, max, step);
        assertThat(new ItemRange(item).asFarAs(steps)).isEqualTo(expected);
    }
}
