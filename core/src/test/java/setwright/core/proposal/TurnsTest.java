package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;

final class TurnsTest {
    private final CarSheet sheet = Sheets.adjustable();

    @Test
    void everyTurnLiesWithinRangeAndOnAStep() {
        List<Turn> turns = Turns.clear(sheet);
        assertThat(turns).isNotEmpty();
        for (Turn clear : turns) {
            for (Turn turn : Turns.sizes(clear)) {
                SetupItem item = turn.item();
                assertThat(turn.to()).as(turn.toString()).isBetween(item.min() - 1e-9, item.max() + 1e-9);
                assertThat(turn.steps() * (turn.to() - item.value())).isPositive();
                assertThat(Math.abs(turn.to() - item.value()) / item.step())
                        .isCloseTo(Math.abs(turn.steps()), org.assertj.core.api.Assertions.within(1e-6));
            }
        }
    }

    @Test
    void anItemAtTheEndOfItsRangeTurnsOneWayOnly() {
        SetupItem bar = sheet.item("front_bar").orElseThrow();
        CarSheet atEnd = sheet.with(List.of(new setwright.core.car.SetupChange("front_bar", bar.value(), bar.max())));
        assertThat(Turns.clear(atEnd).stream()
                        .filter(turn -> turn.item().name().equals("front_bar"))
                        .map(turn -> Long.signum(turn.steps())))
                .containsExactly(-1);
    }
}
