package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.world.RecordingWriter;
import setwright.app.world.SheetCopy;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.car.model.CarAssembler;
import setwright.core.circuit.ReferenceLine;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Verdict;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.driver.StintPlan;
import setwright.core.simulation.driver.StintSimulator;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.simulation.truth.TrueTrigger;
import setwright.core.simulation.vehicle.RunningGear;
import setwright.core.simulation.vehicle.Tank;
import setwright.core.simulation.vehicle.TyreCondition;

/** One balanced car, one circuit, four drivers: a good one and one for each habit that the model of the driver has. */
final class DriversHabitsTest {
    /** Our own; the seeds of the bench are left alone. */
    private static final long SEED = 8_104L;

    private static final int FLYING = 7;
    private static final int PRACTICE = 8;

    @TempDir
    Path folder;

    @Test
    void aGoodDriverHasNoHabit() throws IOException {
        Diagnosis diagnosis = diagnose(DriverStyle.good());

        assertThat(diagnosis.faults()).noneMatch(DrivingFault::habit);
        assertThat(diagnosis.verdict()).isNotEqualTo(Verdict.COACH_THE_DRIVER);
    }

    @Test
    void theBrakeTrailedTooDeepIsFoundAndProved() throws IOException {
        DriverStyle good = DriverStyle.good();
        Diagnosis diagnosis = diagnose(good.withFeet(3.2, good.power(), good.pickUpEarlyM()));

        assertThat(fault(diagnosis, "brake trailed").corners()).hasSizeGreaterThanOrEqualTo(3);
        assertProved(fault(diagnosis, "brake trailed"));
    }

    @Test
    void theThrottleOpenedTooEarlyIsFoundAndProved() throws IOException {
        DriverStyle good = DriverStyle.good();
        Diagnosis diagnosis = diagnose(good.withFeet(good.trail(), 2.8, 14.0));

        assertThat(fault(diagnosis, "throttle too early").corners()).hasSizeGreaterThanOrEqualTo(3);
        assertProved(fault(diagnosis, "throttle too early"));
    }

    @Test
    void aDriverWhoDiffersFromLapToLapIsCoached() throws IOException {
        Diagnosis diagnosis =
                diagnose(DriverStyle.good().withScatter(DriverScatter.steady().times(8.0)));

        assertThat(diagnosis.repeatability().repeatable()).isFalse();
        assertThat(diagnosis.verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
    }

    private static DrivingFault fault(Diagnosis diagnosis, String kind) {
        return diagnosis.faults().stream()
                .filter(found -> found.kind().startsWith(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " was not found among "
                        + diagnosis.faults().stream().map(DrivingFault::kind).toList()));
    }

    private static void assertProved(DrivingFault fault) {
        assertThat(fault.proofs()).hasSameSizeAs(fault.corners());
        assertThat(fault.proofs()).allSatisfy(proof -> {
            assertThat(proof.laps()).isNotEmpty().contains(proof.worstLap());
            assertThat(proof.worst()).isGreaterThanOrEqualTo(0.0);
        });
    }

    Diagnosis diagnose(DriverStyle style) throws IOException {
        WorldCar car = World.car("vessane").orElseThrow();
        CircuitPlan circuit = World.circuit("velmarra").orElseThrow();
        ReferenceLine line = circuit.line(2.0);
        double[] parameters = DrawnCar.balanced(car.sheet(), new Random(SEED));
        DrivenStint driven = StintSimulator.drive(new StintPlan(
                line,
                Road.of(circuit),
                new CarAssembler(car.sheet()).build(car.sheet(), parameters),
                RunningGear.usual(),
                TyreCondition.usual(),
                new Tank(car.sheet().fuelStartKg(), 4.0e-4),
                style,
                FLYING,
                PRACTICE,
                SEED));
        assertThat(driven.lost()).isEmpty();
        Path recording = folder.resolve("stint1.csv");
        RecordingWriter.write(
                recording,
                Logger.log(driven.history(), car.sheet(), LoggerPlan.good(SEED, 100.0)),
                RecordingWriter.Form.random(SEED));
        Path sheet =
                Files.writeString(folder.resolve("car.yaml"), SheetCopy.with(car.name(), car.sheetText(), List.of()));
        CaseAnswer answer = CaseAnswer.of(recording, sheet, TrueTrigger.NONE);
        return answer.diagnosis().orElseThrow(() -> new AssertionError(answer.failure()));
    }
}
