package setwright.app.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.core.simulation.fault.BalancedTruth;
import setwright.core.simulation.layout.CircuitPlan;

final class WorldTest {

    static List<String> cars() {
        return World.cars();
    }

    static List<String> circuits() {
        return World.circuits();
    }

    @Test
    void thereAreFourCarsAndThreeCircuits() {
        assertThat(World.cars()).hasSize(4);
        assertThat(World.circuits()).hasSize(3);
        assertThat(World.car("no such car")).isEmpty();
        assertThat(World.circuit("no such circuit")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void aCircuitHasItsLengthAndABump(String name) {
        CircuitPlan plan = World.circuit(name).orElseThrow();
        assertThat(plan.gapM()).isLessThan(1.0e-3);
        assertThat(Math.abs(plan.turns())).isEqualTo(1);
        assertThat(plan.lengthM()).isBetween(2400.0, 5200.0);
        assertThat(plan.bumps()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("cars")
    void aSheetKeepsTheRulesOfItsClass(String name) {
        CarSheet sheet = World.car(name).orElseThrow().sheet();
        Series.CarClass carClass = World.series().classes().values().stream()
                .filter(one -> one.cars().contains(name))
                .findFirst()
                .orElseThrow();
        assertThat(carClass.breaches(sheet)).isEmpty();
        assertThat(carClass.fixed())
                .allSatisfy(item -> assertThat(sheet.item(item)).isPresent());
        assertThat(carClass.items().keySet())
                .allSatisfy(item -> assertThat(sheet.item(item)).isPresent());
        CarSheet lowered = sheet.with(List.of(new SetupChange("front_ride_height", 60.0, 1.0)));
        assertThat(carClass.breaches(lowered)).singleElement().asString().startsWith("front_ride_height is 1.0 mm");
    }

    @ParameterizedTest
    @MethodSource("cars")
    void everyValueOfASheetStandsOnAStepWithRoomOnBothSides(String name) {
        CarSheet sheet = World.car(name).orElseThrow().sheet();
        assertThat(sheet.setup()).allSatisfy(item -> {
            double steps = (item.value() - item.min()) / item.step();
            assertThat(steps).as(item.name()).isCloseTo(Math.rint(steps), within(1.0e-6));
            assertThat(item.value()).as(item.name()).isGreaterThan(item.min()).isLessThan(item.max());
        });
    }

    @ParameterizedTest
    @MethodSource("cars")
    void aTrueCarIsBalancedAndNotFarFromWhatItsSheetSays(String name) {
        WorldCar car = World.car(name).orElseThrow();
        double[] parameters = car.trueParameters();
        BalancedTruth truth = BalancedTruth.measure(car.sheet(), parameters);
        assertThat(truth.isBalanced()).as(name + " " + truth.margins()).isTrue();
        CarPrior prior = CarPrior.of(car.sheet());
        for (Parameter parameter : Parameter.values()) {
            double away = (parameters[parameter.index()] - prior.middle(parameter)) / prior.spread(parameter);
            assertThat(Math.abs(away)).as(name + ", " + parameter).isLessThan(1.3);
        }
    }
}
