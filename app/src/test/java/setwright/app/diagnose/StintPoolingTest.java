package setwright.app.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.app.evidence.PooledAnswer;
import setwright.app.simulate.DriverKind;
import setwright.app.simulate.Experiment;
import setwright.app.simulate.Simulation;
import setwright.app.world.RecordingWriter.Form;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.pooling.PooledFinding.Belongs;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.intake.gather.RecordingFiles;

/** Two simulated drivers in one balanced car: one drives well, the other keeps on the brake deep into the corner. */
final class StintPoolingTest {
    private static final int LAPS = 8;
    private static final double RATE_HZ = 50.0;

    @TempDir
    private Path folder;

    private Path drive(DriverKind kind, long seed) throws IOException {
        WorldCar car = World.car("vessane").orElseThrow();
        CircuitPlan circuit = World.circuit("velmarra").orElseThrow();
        Experiment experiment =
                new Experiment(car, circuit, List.of(), kind.style(), LAPS, LoggerPlan.good(seed, RATE_HZ), seed);
        Path recording = folder.resolve(kind.words() + ".csv");
        Simulation simulation = new Simulation();
        Simulation.write(experiment, simulation.drive(experiment), Form.USUAL, recording, folder.resolve("car.yaml"));
        return recording;
    }

    @Test
    void aRearThatOneDriverUpsetsWithTheBrakeIsNotTheCars() throws IOException {
        Path well = drive(DriverKind.STEADY, 3L);
        Path braked = drive(DriverKind.BRAKES_LONG, 4L);
        PooledAnswer answer = StintPooling.diagnose(
                new FileDiagnoser(Diagnostician::diagnose),
                new DiagnoseRequest(
                        RecordingFiles.of(well),
                        Optional.of(folder.resolve("car.yaml")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                List.of(braked),
                List.of("Ada", "Bo"),
                Progress.silent());

        List<Finding> alone = answer.pooled().stints().get(1).diagnosis().findings();
        assertThat(alone).as("what Bo's laps show by themselves").isNotEmpty();
        assertThat(answer.pooled().findings()).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.belongsTo()).isEqualTo(Belongs.ONE_DRIVER);
            assertThat(finding.driver()).isEqualTo("Bo");
        });
        assertThat(answer.pooled().verdict()).isEqualTo(Verdict.COACH_THE_DRIVER);
    }
}
