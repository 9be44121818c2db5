package setwright.core.simulation.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.truth.TriggerWitness.Moment;

final class TrueProblemTest {
    private static final List<Integer> LAPS = List.of(1, 2, 3, 4);
    private static final DriveHistory NEUTRAL = Drives.drive(4, (lap, progress) -> 0.0);
    private static final DoubleBinaryOperator LOOSE_IN_THE_MIDDLE =
            (lap, progress) -> progress >= 0.0 && progress <= 1.0 ? Math.toRadians(-0.8) : 0.0;

    private static TrueProblem problem(DriveHistory faulty, PhaseMap map) {
        return ProblemLabeller.label(BalanceTable.of(map, faulty, LAPS), BalanceTable.of(map, NEUTRAL, LAPS))
                .orElseThrow();
    }

    @Test
    void phases_lie_between_the_events_that_part_them() {
        PhaseMap map = PhaseMap.of(Drives.LINE, NEUTRAL, LAPS);
        // the first bend of a chicane is left on the brakes for the second
        List<CornerPhases> clear = map.corners().stream()
                .filter(corner -> corner.corner().endM() > corner.corner().turnOutM() + 5.0)
                .toList();
        assertThat(clear).hasSize(8).allSatisfy(corner -> {
            CornerPhases.Events events = corner.events();
            assertThat(events.brakeOff() - events.pickUp()).isCloseTo(-24.0, within(3.0));
            assertThat(corner.span(Phase.MID).orElseThrow().fromM())
                    .isEqualTo(Math.max(events.brakeOff(), events.turnIn()), within(8.0));
            assertThat(corner.span(Phase.EXIT).orElseThrow().fromM()).isEqualTo(events.pickUp());
        });
    }

    @Test
    void a_difference_put_into_one_phase_is_found_there_with_its_size() {
        DriveHistory faulty = Drives.drive(4, LOOSE_IN_THE_MIDDLE);
        PhaseMap map = PhaseMap.of(Drives.LINE, faulty, LAPS);
        TrueProblem problem = problem(faulty, map);
        assertThat(problem.phase()).isEqualTo(Phase.MID);
        assertThat(problem.acceptPhases()).containsExactly(Phase.MID);
        assertThat(problem.sign()).isEqualTo(BalanceSign.OVERSTEER);
        assertThat(Math.toDegrees(problem.strengthRad())).isCloseTo(0.8, within(0.03));
        assertThat(problem.weak()).isFalse();
        assertThat(problem.acceptSpeeds()).contains(SpeedRange.ALL);
        assertThat(problem.corners()).hasSameSizeAs(map.corners());
    }

    @Test
    void a_difference_that_the_laps_hide_is_weak() {
        DriveHistory faulty = Drives.drive(4, (lap, progress) -> Math.toRadians(lap % 2 == 0 ? 2.4 : -1.2));
        TrueProblem problem = problem(faulty, PhaseMap.of(Drives.LINE, faulty, LAPS));
        assertThat(Math.toDegrees(problem.strengthRad())).isCloseTo(0.6, within(0.02));
        // two values 3.6 apart, twice each: deviation 2.08, error of the mean of four 1.04
        assertThat(Math.toDegrees(problem.errorRad())).isCloseTo(1.04, within(0.02));
        assertThat(problem.weak()).isTrue();
    }

    @Test
    void a_difference_too_small_to_matter_is_weak() {
        DriveHistory faulty = Drives.drive(4, (lap, progress) -> Math.toRadians(0.1));
        assertThat(problem(faulty, PhaseMap.of(Drives.LINE, faulty, LAPS)).weak())
                .isTrue();
    }

    @Test
    void the_histories_tell_where_it_began() {
        DriveHistory inTheMiddle = Drives.drive(4, LOOSE_IN_THE_MIDDLE);
        PhaseMap map = PhaseMap.of(Drives.LINE, inTheMiddle, LAPS);
        Map<Moment, Integer> said =
                TriggerWitness.ask(map, inTheMiddle, LAPS, NEUTRAL, LAPS, problem(inTheMiddle, map));
        assertThat(TriggerWitness.agrees(said, TrueTrigger.TRAIL_BRAKE)).isTrue();
        assertThat(TriggerWitness.agrees(said, TrueTrigger.THROTTLE)).isFalse();

        DriveHistory onThrottle = Drives.drive(4, (lap, progress) -> progress > 1.0 ? Math.toRadians(0.7) : 0.0);
        said = TriggerWitness.ask(map, onThrottle, LAPS, NEUTRAL, LAPS, problem(onThrottle, map));
        assertThat(TriggerWitness.agrees(said, TrueTrigger.THROTTLE)).isTrue();
        assertThat(TriggerWitness.agrees(said, TrueTrigger.TRAIL_BRAKE)).isFalse();
    }
}
