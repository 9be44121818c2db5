package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;

final class TiesTest {
    private static final CarSheet SHEET = Sheets.adjustable();

    private static Candidate turn(String item, long steps, double worthS) {
        return Promising.of(SHEET, item, steps, worthS);
    }

    @Test
    void whatIsWorthTheSameIsATieAndTheClickGoesBeforeTheSpring() {
        Candidate spring = turn("front_spring", -2, 0.100);
        Candidate bar = turn("front_bar", -2, 0.0992);
        assertThat(Ties.best(List.of(spring, bar))).containsExactly(bar, spring);
    }

    @Test
    void whatIsWorthAThousandthMoreIsNoTie() {
        Candidate spring = turn("front_spring", -2, 0.100);
        Candidate bar = turn("front_bar", -2, 0.0988);
        assertThat(Ties.best(List.of(spring, bar))).containsExactly(spring);
    }

    @Test
    void ofTheSameEffortTheSmallerTurnGoesFirst() {
        Candidate far = turn("rear_bar", 3, 0.100);
        Candidate near = turn("front_bar", -1, 0.0995);
        assertThat(Ties.best(List.of(far, near))).containsExactly(near, far);
        assertThat(Ties.best(List.of(turn("front_bar", -1, 0.100), near)).get(0).score())
                .as("with all else alike the one that is worth more")
                .isEqualTo(0.100);
    }

    @ParameterizedTest
    @CsvSource({
        "front_bump, CLICK",
        "rear_wing, CLICK",
        "front_bar, CLICK",
        "brake_bias_front, CLICK",
        "front_tyre_pressure, CLICK",
        "front_spring, TOOLS",
        "rear_ride_height, TOOLS",
        "front_toe, TOOLS",
        "rear_camber, TOOLS",
        "diff_preload, PARTS",
        "gear_3, PARTS",
    })
    void itemsAreSortedByWhatItTakesToUndoThem(String item, Undoing expected) {
        assertThat(Undoing.of(SHEET.item(item).orElseThrow())).isEqualTo(expected);
    }

    @Test
    void theOthersKeepTheirOrder() {
        Candidate first = turn("front_spring", -2, 0.100);
        Candidate second = turn("front_bar", -2, 0.095);
        Candidate third = turn("front_toe", 1, 0.020);
        assertThat(Ties.without(second, List.of(first, second, third))).containsExactly(first, third);
    }
}
