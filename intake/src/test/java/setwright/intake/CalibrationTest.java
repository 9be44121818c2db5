package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.core.recording.Calibration;
import setwright.core.recording.Quantity;

/** Known faults put into a clean run are found, taken out and reported; nothing else is touched. */
class CalibrationTest {
    private static final long SEED = 20_260_113L;

    @TempDir
    private Path folder;

    private final SyntheticRun run = new SyntheticRun(SEED, 400.0);

    private Intake read(boolean position) {
        Path file = SyntheticRun.write(folder, "run.csv", run.csv(SyntheticRun.plain(position), ',', false));
        return RecordingReader.read(file, Optional.empty(), Optional.empty());
    }

    private static double only(Intake intake, String what) {
        assertThat(intake.recording().calibrations())
                .as("seed %d", SEED)
                .extracting(Calibration::what)
                .containsExactly(what);
        return intake.recording().calibrations().get(0).value();
    }

    private void add(String column, double amount) {
        double[] values = run.get(column);
        for (int i = 0; i < values.length; i++) {
            values[i] += amount;
        }
    }

    /** Makes a column late by whole samples of 0.02 s. */
    private void delay(String column, int samples) {
        double[] values = run.get(column);
        for (int i = values.length - 1; i >= 0; i--) {
            values[i] = values[Math.max(0, i - samples)];
        }
    }

    @Test
    void aCleanRunIsLeftAlone() {
        assertThat(read(true).recording().calibrations()).isEmpty();
        assertThat(read(false).recording().calibrations()).isEmpty();
    }

    @Test
    void steeringZero() {
        add("steer", Math.toRadians(3.0));
        assertThat(only(read(true), "steering zero")).isCloseTo(3.0, within(0.1));
        assertThat(only(read(false), "steering zero")).isCloseTo(3.0, within(0.1));
    }

    @Test
    void yawBiasWithPositionAndFromWholeTurnsOfLaps() {
        add("r", Math.toRadians(0.5));
        assertThat(only(read(true), "yaw rate bias")).isCloseTo(0.5, within(0.02));
        assertThat(only(read(false), "yaw rate bias")).isCloseTo(0.5, within(0.02));
    }

    @Test
    void accelerometerOffsets() {
        add("ay", 0.5);
        assertThat(only(read(true), "lateral acceleration offset")).isCloseTo(0.5, within(0.05));
        add("ay", -0.5);
        add("ax", -0.3);
        assertThat(only(read(true), "longitudinal acceleration offset")).isCloseTo(-0.3, within(0.05));
    }

    @Test
    void speedScale() {
        double[] v = run.get("v");
        for (int i = 0; i < v.length; i++) {
            v[i] *= 1.05;
        }
        Intake intake = read(true);
        assertThat(intake.recording().calibrations())
                .filteredOn(c -> c.what().equals("speed scale"))
                .singleElement()
                .satisfies(c -> assertThat(c.value()).isCloseTo(1.0 / 1.05, within(0.005)));
    }

    @Test
    void aLateYawRateIsMoved() {
        delay("r", 18);
        Intake intake = read(true);
        assertThat(only(intake, "yaw rate lag")).isCloseTo(0.36, within(0.03));
        double[] moved = intake.recording().channel(Quantity.YAW_RATE).toArray();
        assertThat(moved[5000]).isCloseTo(run.get("r")[5018], within(1.0e-6));
        assertThat(moved[moved.length - 1]).as("its end is open").isNaN();
    }

    @Test
    void aLatePositionIsToldFromLateSensors() {
        delay("x", 25);
        delay("y", 25);
        assertThat(only(read(true), "position lag")).isCloseTo(0.5, within(0.03));
    }

    @Test
    void theLagOfTheCarItselfIsLeftAlone() {
        // Yaw, lateral acceleration and path answer the hands 0.12 s late: physics.
        double[] steer = run.get("steer");
        System.arraycopy(steer, 6, steer, 0, steer.length - 6);
        assertThat(read(true).recording().calibrations()).isEmpty();
    }

    @Test
    void positionsOfAnotherScaleAreLeftOut() {
        for (String name : List.of("x", "y")) {
            double[] position = run.get(name);
            for (int i = 0; i < position.length; i++) {
                position[i] *= 3.0;
            }
        }
        Intake intake = read(true);
        assertThat(intake.remarks()).anyMatch(remark -> remark.contains("contradict it and are left out"));
        assertThat(intake.recording().has(Quantity.POSITION_X)).isFalse();
    }

    @Test
    void aLateAccelerationThatWasFilteredIsLeftOut() {
        double[] ax = run.get("ax");
        double state = 0.0;
        for (int i = 0; i < ax.length; i++) {
            state += (ax[i] - state) * 0.02 / 3.0;
            ax[i] = state;
        }
        Intake intake = read(true);
        assertThat(intake.remarks())
                .anyMatch(remark -> remark.contains("longitudinal acceleration is left out")
                        || remark.contains("does not follow the change of speed"));
        assertThat(intake.recording().has(Quantity.LONGITUDINAL_ACCELERATION)).isTrue();
    }

    @Test
    void anAccelerationThatIsOnlyLateIsMoved() {
        delay("ax", 25);
        assertThat(only(read(true), "longitudinal acceleration lag")).isCloseTo(0.5, within(0.05));
    }
}
