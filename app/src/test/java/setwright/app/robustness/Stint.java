package setwright.app.robustness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import setwright.app.simulate.DriverKind;
import setwright.app.simulate.Experiment;
import setwright.app.simulate.Simulation;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.simulation.truth.BalanceTable;
import setwright.core.simulation.truth.FlyingLaps;
import setwright.core.simulation.truth.PhaseMap;
import setwright.core.simulation.truth.ProblemLabeller;
import setwright.core.simulation.truth.TrueProblem;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * A car of the invented world that a steady driver has driven on a circuit that was never seen before.
 *
 * @param car      the car
 * @param circuit  drawn by chance
 * @param changes  that put the fault in
 * @param driven   the laps
 */
record Stint(WorldCar car, CircuitPlan circuit, List<SetupChange> changes, DrivenStint driven) {
    static final int LAPS = 8;
    private static final double TRUTH_M = 1.0;
    private static final long SEED = 5L;
    /** Twice the catalogue's: a fault that a driver feels in each lap. */
    private static final double SIZE = 2.0;

    /**
     * Drives one.
     *
     * @param simulation  keeps what the driver learnt
     * @param fault       a name of the catalogue; empty for the balanced car
     * @param flying      laps after the out lap
     */
    static Stint drive(Simulation simulation, String car, long circuit, Optional<String> fault, int flying) {
        WorldCar known = World.car(car).orElseThrow();
        CircuitPlan plan = CircuitPlan.random(circuit);
        List<SetupChange> changes = fault.map(name -> FaultCatalogue.find(name).orElseThrow())
                .map(found -> found.changes(known.sheet(), SIZE))
                .orElse(List.of());
        return new Stint(
                known,
                plan,
                changes,
                simulation.drive(new Experiment(
                        known, plan, changes, DriverKind.STEADY.style(), flying, LoggerPlan.good(SEED, 100.0), SEED)));
    }

    /** Logs it in one of the ways and diagnoses what was logged. */
    Diagnosis diagnosed(Variant variant, Path folder) throws IOException {
        CarSheet sheet =
                CarSheetReader.parse("sheet", variant.sheet(SheetCopy.with(car.name(), car.sheetText(), changes)));
        Path file = Files.createTempFile(folder, "laps", ".csv");
        try {
            RecordingWriter.write(
                    file, Logger.log(driven.history(), car.sheet(), variant.logger()), RecordingWriter.Form.USUAL);
            return Diagnostician.diagnose(
                    StintBuilder.build(RecordingReader.read(file, Optional.empty(), Optional.of(sheet))
                            .recording()),
                    sheet);
        } finally {
            Files.delete(file);
        }
    }

    /** What the fault does, measured on the true signals. */
    TrueProblem truth(Stint balanced) {
        List<Integer> laps = FlyingLaps.clean(driven.lapsS());
        PhaseMap map = PhaseMap.of(circuit.line(TRUTH_M), driven.history(), laps);
        return ProblemLabeller.label(
                        BalanceTable.of(map, driven.history(), laps),
                        BalanceTable.of(map, balanced.driven.history(), FlyingLaps.clean(balanced.driven.lapsS())))
                .orElseThrow();
    }
}
