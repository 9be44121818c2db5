package setwright.app.simulate;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import setwright.app.files.WholeFile;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/** Drives experiments and writes down what a logger kept. What a driver has learnt of a car on a circuit is kept for his next stint. */
public final class Simulation {
    private static final double NODE_M = 1.0;
    /** Laps before the recorded ones, in which the driver gets to know the car. */
    private static final int PRACTICE = 16;

    private static final double FUEL_KG_PER_M = 0.4e-3;
    /** A driver who loses the car comes back a little slower, so many times. */
    private static final int TRIES = 4;

    private static final double CALMER = 0.015;

    private final Map<Learnt, StintSimulator> learnt = new ConcurrentHashMap<>();

    /** What a driver learns: this car in this setup on this circuit, in his way of driving. */
    private record Learnt(String car, String circuit, List<SetupChange> changes, DriverStyle style) {}

    /**
     * Drives; when the car is lost, again by the same driver with a little in hand.
     *
     * @return the first stint that was finished, else the last one tried
     */
    public DrivenStint drive(Experiment experiment) {
        DriverStyle style = experiment.driver();
        DrivenStint stint = drive(experiment, style);
        for (int again = 1; again < TRIES && stint.lost().isPresent(); again++) {
            style = style.withEffort(style.effort() - CALMER);
            stint = drive(experiment, style);
        }
        return stint;
    }

    private DrivenStint drive(Experiment experiment, DriverStyle style) {
        Learnt key = new Learnt(
                experiment.car().name(),
                experiment.circuit().name(),
                experiment.changes(),
                style.withScatter(DriverScatter.NONE));
        return learnt.computeIfAbsent(key, known -> StintSimulator.learnt(plan(experiment, style)))
                .drive(style.scatter(), experiment.flying(), experiment.seed());
    }

    private static StintPlan plan(Experiment experiment, DriverStyle style) {
        CarSheet sheet = experiment.car().sheet();
        return new StintPlan(
                experiment.circuit().line(NODE_M),
                experiment.circuit()::axleHeight,
                experiment.car().trueCar(sheet.with(experiment.changes())),
                RunningGear.usual(),
                TyreCondition.usual(),
                new Tank(sheet.fuelStartKg(), FUEL_KG_PER_M),
                style,
                experiment.flying(),
                PRACTICE,
                experiment.seed());
    }

    /**
     * Writes the recording and the sheet that the user would have.
     *
     * @param recording  file
     * @param sheet      file
     * @throws IOException when one cannot be written
     */
    public static void write(
            Experiment experiment, DrivenStint stint, RecordingWriter.Form form, Path recording, Path sheet)
            throws IOException {
        CarSheet car = experiment.car().sheet();
        RecordingWriter.write(recording, Logger.log(stint.history(), car, experiment.logger()), form);
        WholeFile.write(
                sheet, SheetCopy.with(experiment.car().name(), experiment.car().sheetText(), experiment.changes()));
    }
}
