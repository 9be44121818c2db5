package setwright.app.advice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.ChannelSet;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * Laps of a car of the invented world, logged in full, read and judged as a user's would be.
 *
 * @param diagnosis  of them
 * @param sheet      with the setup that was driven
 */
record DrivenLaps(Diagnosis diagnosis, CarSheet sheet) {
    private static final double LINE_STEP_M = 2.0;
    private static final double FUEL_KG_PER_M = 0.4e-3;
    private static final int FLYING = 8;
    private static final int PRACTICE = 6;

    static DrivenLaps of(Path folder, String name, List<SetupChange> changes, TyreCondition tyres) throws IOException {
        WorldCar car = World.car(name).orElseThrow();
        CircuitPlan circuit = World.circuit("velmarra").orElseThrow();
        CarSheet sheet = car.sheet().with(changes);
        DrivenStint stint = StintSimulator.drive(new StintPlan(
                circuit.line(LINE_STEP_M),
                circuit::axleHeight,
                car.trueCar(sheet),
                RunningGear.usual(),
                tyres,
                new Tank(sheet.fuelStartKg(), FUEL_KG_PER_M),
                DriverStyle.good().withEffort(0.93),
                FLYING,
                PRACTICE,
                5L));
        LoggerPlan usual = LoggerPlan.good(5L, 50.0);
        LoggerPlan full = new LoggerPlan(
                usual.seed(),
                usual.rateHz(),
                ChannelSet.RICH,
                usual.place(),
                usual.satellites(),
                usual.noiseScale(),
                usual.errors(),
                usual.dropOuts(),
                usual.lag(),
                usual.layout());
        Path recording = folder.resolve("laps.csv");
        RecordingWriter.write(recording, Logger.log(stint.history(), sheet, full), RecordingWriter.Form.random(5L));
        Path sheetFile =
                Files.writeString(folder.resolve("car.yaml"), SheetCopy.with(car.name(), car.sheetText(), changes));
        CarSheet read = CarSheetReader.read(sheetFile);
        Path written = Files.exists(recording) ? recording : folder.resolve("laps.csv.gz");
        return new DrivenLaps(
                Diagnostician.diagnose(
                        StintBuilder.build(RecordingReader.read(written, Optional.empty(), Optional.of(read))
                                .recording()),
                        read),
                read);
    }
}
