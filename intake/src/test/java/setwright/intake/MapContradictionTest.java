package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.recording.Quantity;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.map.Dimension;
import setwright.intake.map.MapEntry;
import setwright.intake.map.Units;
import setwright.intake.problem.InputProblem;

/** A map that a user wrote is refused, with the figures, where the data say something else. */
class MapContradictionTest {
    private static final long SEED = 20_260_112L;

    @TempDir
    private static Path folder;

    private static Path withPosition = Path.of("");
    private static Path without = Path.of("");

    @BeforeAll
    static void write() {
        SyntheticRun run = new SyntheticRun(SEED, 150.0);
        withPosition = SyntheticRun.write(folder, "with.csv", run.csv(SyntheticRun.plain(true), ',', false));
        without = SyntheticRun.write(folder, "without.csv", run.csv(SyntheticRun.plain(false), ',', false));
    }

    private static Intake propose(Path file) {
        return RecordingReader.read(file, Optional.empty(), Optional.empty());
    }

    private static InputProblem refused(Path file, Map<Quantity, MapEntry> changes) {
        Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
        entries.putAll(propose(file).proposal().map().entries());
        entries.putAll(changes);
        InputProblem problem = catchThrowableOfType(
                InputProblem.class,
                () -> RecordingReader.read(file, Optional.of(new ChannelMap(entries)), Optional.empty()));
        assertThat(problem).as("%s", changes).isNotNull();
        return problem;
    }

    @Test
    void theProposalItselfPassesAndGivesTheSameRecording() {
        for (Path file : new Path[] {withPosition, without}) {
            Intake proposed = propose(file);
            ChannelMap reread = ChannelMapFile.parse("map.yaml", ChannelMapFile.write(proposed.proposal()));
            Intake again = RecordingReader.read(file, Optional.of(reread), Optional.empty());
            for (Quantity quantity : proposed.recording().quantities()) {
                assertThat(again.recording().channel(quantity).toArray())
                        .as("%s", quantity)
                        .isEqualTo(proposed.recording().channel(quantity).toArray());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "SPEED, SPEED, km/h, speed [m/s], 1",
        "SPEED, SPEED, mph, speed [m/s], 1",
        "LATERAL_ACCELERATION, ACCELERATION, g, lateral acceleration [m/s2], 1",
        "LONGITUDINAL_ACCELERATION, ACCELERATION, g, longitudinal acceleration [m/s2], 1",
        "YAW_RATE, ANGULAR_RATE, deg/s, yaw rate [rad/s], 1",
        "STEERING_WHEEL_ANGLE, ANGLE, deg, steering wheel angle [rad], 1",
        "LATERAL_ACCELERATION, ACCELERATION, m/s2, lateral acceleration [m/s2], -1",
        "LONGITUDINAL_ACCELERATION, ACCELERATION, m/s2, longitudinal acceleration [m/s2], -1",
        "YAW_RATE, ANGULAR_RATE, rad/s, yaw rate [rad/s], -1",
        "STEERING_WHEEL_ANGLE, ANGLE, rad, steering wheel angle [rad], -1",
        "SPEED, SPEED, m/s, longitudinal acceleration [m/s2], 1",
        "LATERAL_ACCELERATION, ACCELERATION, m/s2, longitudinal acceleration [m/s2], 1"
    })
    void wrongUnitSignOrColumn(Quantity quantity, Dimension dimension, String unit, String column, int sign) {
        MapEntry entry = new MapEntry(column, Units.get(dimension, unit), sign, 0.0);
        for (Path file : new Path[] {withPosition, without}) {
            InputProblem problem = refused(file, Map.of(quantity, entry));
            assertThat(problem.column()).isPresent();
            assertThat(problem.getMessage()).containsPattern("\\d\\.\\d").contains("channel map");
        }
    }

    @Test
    void swappedColumns() {
        for (Path file : new Path[] {withPosition, without}) {
            InputProblem problem = refused(
                    file,
                    Map.of(
                            Quantity.YAW_RATE,
                            new MapEntry(
                                    "lateral acceleration [m/s2]", Units.get(Dimension.ANGULAR_RATE, "rad/s"), 1, 0.0),
                            Quantity.LATERAL_ACCELERATION,
                            new MapEntry("yaw rate [rad/s]", Units.get(Dimension.ACCELERATION, "m/s2"), 1, 0.0)));
            assertThat(problem.getMessage()).contains("swapped");
        }
    }

    @Test
    void theFiguresAreInTheMessage() {
        InputProblem problem = refused(
                withPosition,
                Map.of(
                        Quantity.LATERAL_ACCELERATION,
                        new MapEntry("lateral acceleration [m/s2]", Units.get(Dimension.ACCELERATION, "g"), 1, 0.0)));
        assertThat(problem.getMessage())
                .contains("data in m/s2")
                .containsPattern("1\\.0\\d times the rate of turn")
                .contains("9.807 times");
    }

    @Test
    void aColumnThatIsNotThere() {
        InputProblem problem = refused(
                withPosition,
                Map.of(Quantity.SPEED, new MapEntry("sped [m/s]", Units.get(Dimension.SPEED, "m/s"), 1, 0.0)));
        assertThat(problem.getMessage()).contains("Did you mean 'speed [m/s]'");
    }
}
