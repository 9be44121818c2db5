package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.Sheets;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Upshifts behind three corners of an invented drive, with the pull of both gears as told. */
final class ShiftFaultsTest {
    private static final String LATE = "upshift too late: the next gear already pulls harder";
    private static final String EARLY = "upshift too early: this gear still pulls harder and has revs left";
    /** Its limit is 800 rad/s; shift lights come at 736 to 776. */
    private static final CarSheet CAR = Sheets.with(List.of());

    private static final int CORNERS = 3;
    private static final Stint DRIVE = new Drive(3L).stint();

    @Test
    void theNextGearThatPullsHarderWasDueBefore() {
        shown(find(3.0, 3.5, 790.0, corner -> true), LATE, 0.5);
    }

    @Test
    void theGearThatPullsHarderAndHasRevsLeftWasLeftTooEarly() {
        shown(find(4.0, 2.5, 640.0, corner -> true), EARLY, 1.5);
    }

    /** A tenth of m/s²; near the limit; 0.3 m/s²; an eighth of the pull. */
    @ParameterizedTest
    @CsvSource({"3.0, 3.1, 790", "4.0, 2.5, 760", "3.0, 2.7, 640", "6.0, 5.25, 640"})
    void whatComesNearIsNone(double pull, double nextPull, double engine) {
        assertThat(find(pull, nextPull, engine, corner -> true)).isEmpty();
    }

    @Test
    void whatMostShiftsOfAGearDoNotShowIsNone() {
        assertThat(find(3.0, 3.5, 790.0, corner -> corner == 1)).isEmpty();
        assertThat(find(4.0, 2.5, 640.0, corner -> corner == 1)).isEmpty();
    }

    @Test
    void aFootThatIsNotDownTellsNothing() {
        Recording lifted = shifted(3.0, 3.5, 790.0, corner -> true)
                .with(Quantity.THROTTLE, Channel.of(new double[DRIVE.recording().sampleCount()]));
        assertThat(ShiftFaults.find(stint(lifted), CAR)).isEmpty();
    }

    private static void shown(List<DrivingFault> faults, String kind, double size) {
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(kind);
            assertThat(fault.corners()).containsExactly(1, 2, 3);
            assertThat(fault.lapShare()).isGreaterThan(0.9);
            // a tenth of the greatest step, which the filter spreads over the change
            assertThat(fault.size()).isBetween(size - 0.15, size + 0.15);
            assertThat(fault.proofs())
                    .allSatisfy(proof -> assertThat(proof.laps()).hasSizeGreaterThan(6));
        });
    }

    /** All pull alike but behind the corners told. */
    private static List<DrivingFault> find(double pull, double nextPull, double engine, IntPredicate corners) {
        return ShiftFaults.find(stint(shifted(pull, nextPull, engine, corners)), CAR);
    }

    private static Recording shifted(double pull, double nextPull, double engineRadPerS, IntPredicate corners) {
        Recording recording = DRIVE.recording();
        double[] gear = new double[recording.sampleCount()];
        Arrays.fill(gear, 3.0);
        double[] engine = new double[gear.length];
        Arrays.fill(engine, engineRadPerS);
        double[] throttle = recording.channel(Quantity.THROTTLE).toArray();
        double[] forward = recording.channel(Quantity.LONGITUDINAL_ACCELERATION).toArray();
        int second = (int) Math.round(recording.sampleRateHz());
        for (Lap lap : DRIVE.goodLaps()) {
            for (Corner corner : DRIVE.circuit().corners().subList(0, CORNERS)) {
                int at = lap.from();
                while (DRIVE.station().get(at) < corner.endM() - 15.0) {
                    at++;
                }
                double next = corners.test(corner.number()) ? nextPull : pull;
                Arrays.fill(throttle, at - second, at + second, 1.0);
                Arrays.fill(forward, at - second, at, pull);
                Arrays.fill(forward, at, at + second, next);
                Arrays.fill(gear, at, at + second, 4.0);
            }
        }
        return recording
                .with(Quantity.GEAR, Channel.of(gear))
                .with(Quantity.ENGINE_SPEED, Channel.of(engine))
                .with(Quantity.THROTTLE, Channel.of(throttle))
                .with(Quantity.LONGITUDINAL_ACCELERATION, Channel.of(forward));
    }

    private static Stint stint(Recording recording) {
        return new Stint(recording, DRIVE.circuit(), DRIVE.laps(), DRIVE.station(), DRIVE.offset());
    }
}
