package setwright.app.sweep;

import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.simulation.sweep.SetupSweep;

/**
 * Laps over setup items, with what they were computed for.
 *
 * @param car        as on the sheet
 * @param circuit    where
 * @param recording  whose laps told of the car; without one the car is as on the sheet
 * @param sweep      the laps
 */
public record SweepAnswer(CarSheet car, Circuit circuit, Optional<String> recording, SetupSweep sweep) {}
