package setwright.app.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.diagnose.PackagedRun.Style;
import setwright.app.evidence.Answer;
import setwright.core.recording.Quantity;
import setwright.intake.map.Dimension;

/** However a drive is written down, wherever it took place and on whatever clock, the same is found in it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class FindingsLawsTest {
    private static final long SEED = 20_260_118L;
    /** With latitude and longitude, yaw rate, wheel speeds and brake pressure; 50 rows a second; has gaps. */
    private static final String ON_EARTH = "practice-04";
    /** With positions on a plane and no yaw rate; 50 rows a second. */
    private static final String ON_PLANE = "practice-07";
    /** Without positions; 50 rows a second. */
    private static final String NOWHERE = "practice-05";
    /** A sound car; 100 rows a second. */
    private static final String QUICK = "practice-06";

    private static final Style RACING = new Style(
            Map.of(),
            Map.of(
                    Dimension.SPEED, "mph",
                    Dimension.ANGLE, "rad",
                    Dimension.ACCELERATION, "g",
                    Dimension.ANGULAR_RATE, "deg/s",
                    Dimension.SHARE, "0-1",
                    Dimension.PRESSURE, "psi",
                    Dimension.LENGTH, "km",
                    Dimension.TIME, "ms"));
    private static final Style LABORATORY = new Style(
            Map.of(
                    Quantity.TIME, "t",
                    Quantity.SPEED, "vx",
                    Quantity.STEERING_WHEEL_ANGLE, "Lenkwinkel",
                    Quantity.THROTTLE, "accelerator pedal",
                    Quantity.BRAKE, "brk",
                    Quantity.LATERAL_ACCELERATION, "ay",
                    Quantity.LONGITUDINAL_ACCELERATION, "ax",
                    Quantity.YAW_RATE, "gyro z",
                    Quantity.LAP_NUMBER, "lapCount"),
            Map.of(
                    Dimension.SPEED, "m/s",
                    Dimension.ACCELERATION, "ft/s2",
                    Dimension.ANGULAR_RATE, "rpm",
                    Dimension.SHARE, "%",
                    Dimension.PRESSURE, "kPa",
                    Dimension.LENGTH, "ft"));

    @TempDir
    private Path folder;

    private final Map<String, PackagedRun> runs = new HashMap<>();
    private final Map<String, Answer> answers = new HashMap<>();

    private PackagedRun run(String name) {
        return runs.computeIfAbsent(name, PackagedRun::of);
    }

    /** The answer to the recording as packaged; a test of findings needs some, or a verdict that there are none. */
    private Answer asPackaged(String name) {
        return answers.computeIfAbsent(name, key -> {
            Answer answer = run(name).diagnose(run(name).table().write(folder.resolve("packaged.csv")));
            assertThat(answer.diagnosis().findings().isEmpty()).isEqualTo(name.equals(QUICK));
            return answer;
        });
    }

    private Answer answer(PackagedRun run) {
        return run.diagnose(run.table().write(folder.resolve("changed.csv")));
    }

    private void assertSame(String what, String name, PackagedRun changed, boolean mirrored) {
        SameAnswer.assertForm(
                what, asPackaged(name).diagnosis(), answer(changed).diagnosis(), mirrored);
    }

    private void assertSameDrive(String what, String name, PackagedRun changed) {
        SameAnswer.assertDrive(
                what, asPackaged(name).diagnosis(), answer(changed).diagnosis());
    }

    @ParameterizedTest
    @ValueSource(strings = {ON_EARTH, ON_PLANE, NOWHERE})
    void anyUnitsWordsOrderAndDelimiter(String name) {
        PackagedRun run = run(name);
        Answer packaged = asPackaged(name);

        Answer racing =
                run.diagnose(run.written(RACING).shuffled(SEED).write(folder.resolve("racing.csv"), "\t", false));
        Answer laboratory =
                run.diagnose(run.written(LABORATORY).shuffled(SEED + 1).write(folder.resolve("lab.csv"), ";", true));

        SameAnswer.assertForm("racing units", packaged.diagnosis(), racing.diagnosis(), false);
        SameAnswer.assertForm("laboratory units", packaged.diagnosis(), laboratory.diagnosis(), false);
        assertThat(racing.car()).as("the car sheet keeps its own units").isEqualTo(packaged.car());
        assertThat(laboratory.car()).isEqualTo(packaged.car());
    }

    @ParameterizedTest
    @EnumSource(
            value = Quantity.class,
            names = {"STEERING_WHEEL_ANGLE", "YAW_RATE", "LATERAL_ACCELERATION"})
    void anySignOfAColumn(Quantity quantity) {
        for (String name : new String[] {ON_EARTH, NOWHERE}) {
            assertSame(
                    name + ": " + quantity.words() + " flipped", name, run(name).flipped(quantity), false);
        }
    }

    @ParameterizedTest
    @CsvSource({"0.7, 1500.0, -81000.0", "-1.9, 0.0, 0.0"})
    void anyPlaceAndTurnOnAPlane(double turnRad, double eastM, double northM) {
        assertSame("moved", ON_PLANE, Moves.onPlane(run(ON_PLANE), turnRad, eastM, northM, false), false);
    }

    @ParameterizedTest
    @CsvSource({
        "64.1, -21.9, 0.0", // far north
        "-33.1, 0.0005, 63.0", // across the meridian from which longitude is counted
        "-17.0, 180.0, 115.0", // across the one where it jumps
    })
    void anyPlaceAndTurnOnEarth(double latitude, double longitude, double turnDeg) {
        PackagedRun moved = Moves.onEarth(run(ON_EARTH), new double[] {latitude, longitude}, turnDeg, false);
        assertSame("moved to " + latitude + ", " + longitude, ON_EARTH, moved, false);
    }

    @Test
    void inTheMirrorCornersTurnTheOtherWayAndTheFindingsStay() {
        PackagedRun onEarth = run(ON_EARTH);
        assertSame("earth", ON_EARTH, Moves.onEarth(onEarth, Moves.middle(onEarth), 0.0, true), true);
        assertSame("plane", ON_PLANE, Moves.onPlane(run(ON_PLANE), 0.7, 300.0, 100.0, true), true);
        assertSame("without position", NOWHERE, run(NOWHERE).mirroredSides(), true);
    }

    @Test
    void anyStartOfTheClock() {
        assertSame("later", ON_PLANE, run(ON_PLANE).with(Quantity.TIME, time -> time + 1.0e6), false);
    }

    /**
     * Not on {@link #ON_PLANE}: its corner 9 lies at the limit of what counts as repeatable, 0.09 s against 0.09 s, so that
     * the noise of other samples decides whether it is judged.
     */
    @ParameterizedTest
    @ValueSource(strings = {ON_EARTH, NOWHERE})
    void anyJitterAndMissingRows(String name) {
        assertSameDrive("jitter of seed " + SEED, name, Times.jittered(run(name), 0.3, SEED));
        assertSameDrive("missing rows of seed " + SEED, name, Times.thinned(run(name), 0.02, SEED));
    }

    @Test
    void halfTheRate() {
        assertSameDrive("even rows", QUICK, Times.halved(run(QUICK), 0));
        assertSameDrive("odd rows", QUICK, Times.halved(run(QUICK), 1));
        // 25 rows a second, on a recording with findings
        assertSameDrive("even rows", ON_EARTH, Times.halved(run(ON_EARTH), 0));
    }
}
