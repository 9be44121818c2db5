package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

final class WheelEventFinderTest {
    private static final SimulatedStint DRIVEN = SimulatedStint.of(0.93, 12L);

    private static WheelEvidence find(Stint stint) {
        HandlingTrace trace = HandlingTracer.trace(stint, DRIVEN.sheet());
        return WheelEventFinder.find(stint, trace, DRIVEN.sheet());
    }

    @Test
    void a_wheel_that_stands_under_the_brake_is_found_where_it_was() {
        Recording recording = DRIVEN.recording(Set.of());
        Stint before = StintBuilder.build(recording);
        HandlingTrace trace = HandlingTracer.trace(before, DRIVEN.sheet());
        Lap lap = before.goodLaps().get(1);
        int at = lap.from();
        while (!(trace.brake().get(at) > 0.3
                && trace.brake().get(at + 20) > 0.3
                && trace.speed().get(at) > 20.0
                && Math.abs(trace.lateral().get(at)) < 1.0)) {
            at++;
        }
        double[] wheel = recording.channel(Quantity.WHEEL_SPEED_FRONT_RIGHT).toArray();
        for (int i = at; i < at + 15; i++) {
            wheel[i] = 0.3 * wheel[i];
        }
        Stint stint = StintBuilder.build(recording.with(Quantity.WHEEL_SPEED_FRONT_RIGHT, Channel.of(wheel)));
        double when = at * recording.stepS();
        assertThat(find(before).events())
                .noneMatch(event -> event.kind() == WheelEvent.Kind.FRONT_LOCK && Math.abs(event.timeS() - when) < 0.1);
        assertThat(find(stint).events())
                .anyMatch(event -> event.kind() == WheelEvent.Kind.FRONT_LOCK
                        && Math.abs(event.timeS() - when) < 0.1
                        && event.lap() == lap.number()
                        && event.slipRatio() < -0.6);
    }

    @Test
    void without_wheel_speeds_nothing_is_seen_and_nothing_is_said() {
        WheelEvidence evidence = find(DRIVEN.without(Set.of(
                Quantity.WHEEL_SPEED_FRONT_LEFT,
                Quantity.WHEEL_SPEED_FRONT_RIGHT,
                Quantity.WHEEL_SPEED_REAR_LEFT,
                Quantity.WHEEL_SPEED_REAR_RIGHT)));
        assertThat(evidence.locksSeen()).isFalse();
        assertThat(evidence.spinSeen()).isFalse();
        assertThat(evidence.events()).isEmpty();
    }
}
