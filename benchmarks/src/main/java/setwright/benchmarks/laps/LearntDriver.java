package setwright.benchmarks.laps;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.layout.CircuitPlan;

/** A driver who knows the car of the measured recording on a circuit drawn by chance. */
public final class LearntDriver {
    private LearntDriver() {}

    /** Lets the driver learn; always the same one. */
    public static StintSimulator learn() {
        CarSheet sheet = TenLaps.read().sheet();
        CarModel car = new CarAssembler(sheet)
                .build(sheet.with(List.<SetupChange>of()), CarPrior.of(sheet).middle());
        StintPlan plan = StintPlan.usual(CircuitPlan.random(1L).line(1.0), car, DriverStyle.good(), 1L);
        return StintSimulator.learnt(plan);
    }
}
