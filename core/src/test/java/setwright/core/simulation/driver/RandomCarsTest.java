package setwright.core.simulation.driver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Lines;
import setwright.core.circuit.ReferenceLine;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/** Whatever the car, a drive ends with laps or with a car that was lost, and every signal is a number. */
final class RandomCarsTest {
    private static final int CARS = 1000;
    private static final long SEED = 20261125L;

    @Test
    void a_thousand_random_cars_finish_a_lap_or_are_lost() {
        ReferenceLine line = Lines.shortLoop();
        CarSheet sheet = Sheets.adjustable();
        double[][] draws = CarBelief.of(CarPrior.of(sheet)).draw(CARS, SEED);
        List<String> broken = IntStream.range(0, CARS)
                .parallel()
                .mapToObj(i -> fault(line, car(sheet, draws[i], SEED + i), i))
                .filter(text -> !text.isEmpty())
                .toList();
        assertThat(broken).as("seed " + SEED).isEmpty();
    }

    private static CarModel car(CarSheet sheet, double[] draw, long seed) {
        Random random = new Random(seed);
        List<SetupChange> changes = new ArrayList<>();
        for (SetupItem item : sheet.setup()) {
            int steps = (int) Math.floor((item.max() - item.min()) / item.step());
            double value = item.min() + item.step() * random.nextInt(steps + 1);
            changes.add(new SetupChange(item.name(), item.value(), value));
        }
        return new CarAssembler(sheet).build(sheet.with(changes), draw);
    }

    private static String fault(ReferenceLine line, CarModel car, int number) {
        DrivenStint stint = StintSimulator.drive(new StintPlan(
                line,
                RoadBumps.NONE,
                car,
                RunningGear.usual(),
                TyreCondition.usual(),
                Tank.CONSTANT,
                DriverStyle.good(),
                1,
                0,
                number));
        if (stint.lost().isEmpty() && stint.lapsS().size() != 2) {
            return number + ": neither lost nor finished";
        }
        DriveHistory history = stint.history();
        for (Signal signal : Signal.values()) {
            for (int i = 0; i < history.count(); i++) {
                if (!Double.isFinite(history.at(signal, i))) {
                    return number + ": " + signal + " is no number at sample " + i;
                }
            }
        }
        double load = car.body().massKg() * 9.81;
        for (int i = 0; i < history.count(); i++) {
            for (int wheel = 0; wheel < 4; wheel++) {
                double share = switch (wheel) {
                            case 0 -> history.at(Signal.LOAD_FRONT_LEFT, i);
                            case 1 -> history.at(Signal.LOAD_FRONT_RIGHT, i);
                            case 2 -> history.at(Signal.LOAD_REAR_LEFT, i);
                            default -> history.at(Signal.LOAD_REAR_RIGHT, i);
                        }
                        / load;
                if (share < 0.0 || share > 4.0) {
                    return number + ": a wheel carries " + share + " of the weight at sample " + i;
                }
            }
        }
        return "";
    }
}
