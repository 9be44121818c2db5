package setwright.app.simulate;

import java.util.List;
import setwright.app.world.WorldCar;
import setwright.core.car.SetupChange;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.LoggerPlan;

/**
 * One stint to be driven.
 *
 * @param car       from the world
 * @param circuit   from the world
 * @param changes   of its setup, away from the car's sheet
 * @param driver    how he drives
 * @param flying    laps after the out lap
 * @param logger    what records
 * @param seed      the same seed gives the same laps
 */
public record Experiment(
        WorldCar car,
        CircuitPlan circuit,
        List<SetupChange> changes,
        DriverStyle driver,
        int flying,
        LoggerPlan logger,
        long seed) {
    public Experiment {
        changes = List.copyOf(changes);
    }
}
