package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Habits;
import setwright.core.handling.PassShapes;
import setwright.core.handling.SpeedClass;
import setwright.core.recording.Channel;

/** Invented passes of one corner, each entered faster than the one before by the same step. */
final class OverdrivenEntryTest {
    private static final Stint STINT = new Drive(3L).stint();
    private static final double STEP_MPS = 0.5;
    private static final DoubleUnaryOperator SLOWER = lap -> 5.0 + 0.05 * lap;
    private static final DoubleUnaryOperator SAME = lap -> 0.0;
    private static final DoubleUnaryOperator GROWS = lap -> lap;

    @Test
    void moreSpeedThatCostsTimeAndALaterThrottleIsTooMuch() {
        assertThat(find(8, STEP_MPS, SLOWER, GROWS, SAME)).hasValueSatisfying(fault -> {
            assertThat(fault.kind()).isEqualTo(OverdrivenEntry.KIND);
            assertThat(fault.corners()).containsExactly(1);
            assertThat(fault.unit()).isEqualTo("km/h");
            // the quicker half are laps 1 to 4, 30.75 m/s in the middle; the last lap is 2.75 m/s faster
            assertThat(fault.proofs()).singleElement().satisfies(proof -> {
                assertThat(proof.laps()).containsExactly(5, 6, 7, 8);
                assertThat(proof.worstLap()).isEqualTo(8);
                assertThat(proof.worst()).isCloseTo(9.9, within(1.0e-6));
            });
            // from the middle of all laps down to the quarter of the slow entries: 0.875 m/s at 0.1 s for each
            assertThat(fault.cost())
                    .hasValueSatisfying(cost -> assertThat(cost.seconds()).isCloseTo(0.0875, within(1.0e-6)));
        });
    }

    @Test
    void aSlowerExitSaysTheSame() {
        assertThat(find(8, STEP_MPS, SLOWER, SAME, lap -> -0.1 * lap)).isPresent();
    }

    @Test
    void neitherALaterThrottleNorASlowerExitMeansAnotherReason() {
        assertThat(find(8, STEP_MPS, SLOWER, SAME, SAME)).isEmpty();
        assertThat(find(8, STEP_MPS, SLOWER, lap -> -lap, lap -> 0.1 * lap)).isEmpty();
    }

    @Test
    void speedThatPaysIsNone() {
        assertThat(find(8, STEP_MPS, lap -> 5.0 - 0.05 * lap, GROWS, SAME)).isEmpty();
    }

    @Test
    void timesThatTheSpeedDoesNotOrderAreNone() {
        assertThat(find(8, STEP_MPS, lap -> 5.0 + 0.05 * (lap % 3), GROWS, SAME))
                .isEmpty();
    }

    @Test
    void lessThanADriverCanFeelIsNone() {
        assertThat(find(8, 0.05, SLOWER, GROWS, SAME)).isEmpty();
    }

    @Test
    void fivePassesAreTooFew() {
        assertThat(find(5, STEP_MPS, SLOWER, GROWS, SAME)).isEmpty();
        assertThat(find(6, STEP_MPS, SLOWER, GROWS, SAME)).isPresent();
    }

    private static Optional<DrivingFault> find(
            int laps, double stepMps, DoubleUnaryOperator time, DoubleUnaryOperator pickUpM, DoubleUnaryOperator exit) {
        List<CornerPass> passes = IntStream.rangeClosed(1, laps)
                .mapToObj(lap -> pass(
                        lap,
                        30.0 + stepMps * (lap - 1),
                        time.applyAsDouble(lap),
                        250.0 + pickUpM.applyAsDouble(lap),
                        40.0 + exit.applyAsDouble(lap)))
                .toList();
        return OverdrivenEntry.find(STINT, Map.of(1, passes));
    }

    private static CornerPass pass(int lap, double entry, double time, double pickUpM, double exit) {
        double[] speed = new double[PassShapes.POINTS];
        Arrays.fill(speed, entry);
        Channel flat = Channel.of(new double[PassShapes.POINTS]);
        OptionalDouble none = OptionalDouble.empty();
        return new CornerPass(
                lap,
                1,
                SpeedClass.MEDIUM,
                new CornerEvents(
                        none, none, OptionalDouble.of(200.0), none, none, none, OptionalDouble.of(pickUpM), none, none),
                10.0 * lap,
                Map.of(),
                List.of(),
                List.of(),
                new Habits(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.1, 0.4, 0.8, 0.0, Double.NaN, 0.0, 1.5, 1.2),
                new PassShapes(Channel.of(speed), flat, flat, flat),
                entry,
                25.0,
                exit,
                time,
                0.5);
    }
}
