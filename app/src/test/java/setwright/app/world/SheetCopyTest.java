package setwright.app.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;

final class SheetCopyTest {

    static List<String> cars() {
        return World.cars();
    }

    @ParameterizedTest
    @MethodSource("cars")
    void aCopyReadsAsTheChangedSheetAndNothingElseMoved(String name) {
        WorldCar car = World.car(name).orElseThrow();
        for (Fault fault : FaultCatalogue.of(car.sheet())) {
            List<SetupChange> changes = fault.changes(car.sheet(), 1.0);
            String copy = SheetCopy.with("copy.yaml", car.sheetText(), changes);
            CarSheet changed = CarSheetReader.parse("copy.yaml", copy);
            assertThat(changed).as(fault.name()).isEqualTo(car.sheet().with(changes));
            assertThat(copy.lines()
                            .filter(line -> !car.sheetText().contains(line))
                            .count())
                    .as(fault.name())
                    .isEqualTo(changes.size());
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void anItemThatIsNotThereIsRefused(String name) {
        String text = World.car(name).orElseThrow().sheetText();
        assertThatThrownBy(() -> SheetCopy.with("copy.yaml", text, List.of(new SetupChange("gear_7", 1.0, 1.1))))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("gear_7");
    }
}
