package setwright.app.sweep;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Circuit;
import setwright.core.judgement.Diagnosis;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;

/** Drives laps over setup items. */
@FunctionalInterface
public interface SetupSweeper {

    /**
     * Returns the laps.
     *
     * @param car      what is known of it
     * @param laps     that tell more of the car
     * @param circuit  where to drive
     * @param items    one or two
     * @param onLap    is told after each lap, from any thread
     */
    SetupSweep sweep(CarSheet car, Optional<Diagnosis> laps, Circuit circuit, List<SweepItem> items, Runnable onLap);
}
