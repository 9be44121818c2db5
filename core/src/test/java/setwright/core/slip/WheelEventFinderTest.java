package setwright.core.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

/** Wheels of a simulated stint that are made to slip for a moment where nothing slipped before. */
final class WheelEventFinderTest {
    private static final SimulatedStint DRIVEN = SimulatedStint.of(0.93, 12L);
    private static final Recording RECORDING = DRIVEN.recording(Set.of());
    private static final Stint BEFORE = StintBuilder.build(RECORDING);
    private static final HandlingTrace TRACE = HandlingTracer.trace(BEFORE, DRIVEN.sheet());

    private static final List<Quantity> WHEELS = List.of(
            Quantity.WHEEL_SPEED_FRONT_LEFT,
            Quantity.WHEEL_SPEED_FRONT_RIGHT,
            Quantity.WHEEL_SPEED_REAR_LEFT,
            Quantity.WHEEL_SPEED_REAR_RIGHT);
    private static final int FRONT = 0;
    private static final int REAR = 2;

    /** 0.16 s, twice the shortest event. */
    private static final int SPELL = 10;

    private static final int TOO_SHORT = 4;
    /** Beyond what counts as locked or spinning, just below it, and what rolls. */
    private static final double FAR = 0.4;

    private static final double NEARLY = 0.12;
    private static final double ROLLS = 0.02;

    @ParameterizedTest
    @CsvSource({"0, FRONT_LOCK", "1, FRONT_LOCK", "2, REAR_LOCK", "3, REAR_LOCK"})
    void a_wheel_that_stands_on_the_straight_is_a_lock_of_its_axle(int wheel, WheelEvent.Kind kind) {
        int at = where(WheelEventFinderTest::brakesStraight);
        assertThat(near(RECORDING, at)).isEmpty();
        List<WheelEvent> events = near(slipping(RECORDING, at, SPELL, wheel, -0.7), at);
        assertThat(events).extracting(WheelEvent::kind).containsExactly(kind);
        assertThat(events.get(0).slipRatio()).isBetween(-0.75, -0.65);
        assertThat(events.get(0).durationS()).isBetween(0.15, 0.17);
        assertThat(events.get(0).lap()).isEqualTo(BEFORE.goodLaps().get(1).number());
    }

    @ParameterizedTest
    @CsvSource({"0, INSIDE_FRONT_LOCK, FRONT_LOCK", "2, INSIDE_REAR_LOCK, REAR_LOCK"})
    void in_a_bend_the_outer_wheel_decides_whose_lock_it_is(int axle, WheelEvent.Kind inside, WheelEvent.Kind whole) {
        int at = where(WheelEventFinderTest::trails);
        assertThat(axle(at, axle, -FAR, -ROLLS)).containsExactly(inside);
        assertThat(axle(at, axle, -FAR, -NEARLY)).containsExactly(inside);
        assertThat(axle(at, axle, -FAR, -FAR)).containsExactly(whole);
        assertThat(axle(at, axle, -NEARLY, -FAR)).containsExactly(whole);
        assertThat(axle(at, axle, -NEARLY, -NEARLY)).isEmpty();
        assertThat(axle(at, axle, -ROLLS, -ROLLS)).isEmpty();
    }

    @Test
    void in_a_bend_the_outer_wheel_decides_what_spins() {
        int at = where(WheelEventFinderTest::pullsInABend);
        assertThat(axle(at, REAR, FAR, ROLLS)).containsExactly(WheelEvent.Kind.INSIDE_WHEELSPIN);
        assertThat(axle(at, REAR, FAR, NEARLY)).containsExactly(WheelEvent.Kind.INSIDE_WHEELSPIN);
        assertThat(axle(at, REAR, FAR, FAR)).containsExactly(WheelEvent.Kind.WHEELSPIN);
        assertThat(axle(at, REAR, NEARLY, NEARLY)).isEmpty();
    }

    @Test
    void wheels_that_nothing_drives_do_not_spin() {
        assertThat(axle(where(WheelEventFinderTest::pullsInABend), FRONT, FAR, FAR))
                .isEmpty();
    }

    @Test
    void locking_takes_the_brake_and_spinning_the_throttle() {
        assertThat(axle(where(WheelEventFinderTest::pullsInABend), REAR, -FAR, -FAR))
                .isEmpty();
        assertThat(axle(where(WheelEventFinderTest::trails), REAR, FAR, FAR)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void a_moment_is_no_lock(int wheel) {
        int at = where(WheelEventFinderTest::brakesStraight);
        assertThat(near(slipping(RECORDING, at, TOO_SHORT, wheel, -0.7), at)).isEmpty();
    }

    @Test
    void an_engine_ahead_of_the_road_shows_wheelspin_without_wheel_speeds() {
        int at = where(WheelEventFinderTest::pullsStraight);
        assertThat(engine(at, 0, 0.0)).isEmpty();
        List<WheelEvent> events = engine(at, SPELL, 0.3);
        assertThat(events).extracting(WheelEvent::kind).containsExactly(WheelEvent.Kind.WHEELSPIN);
        assertThat(events.get(0).slipRatio()).isBetween(0.27, 0.33);
        assertThat(engine(at, SPELL, NEARLY)).isEmpty();
        assertThat(engine(at, SPELL, -0.3)).isEmpty();
        assertThat(engine(at, TOO_SHORT, 0.3)).isEmpty();
    }

    @Test
    void an_engine_that_is_blipped_under_the_brake_spins_no_wheel() {
        assertThat(engine(where(WheelEventFinderTest::brakesStraight), SPELL, 0.3))
                .isEmpty();
    }

    @Test
    void an_engine_between_two_gears_spins_no_wheel() {
        int at = where(WheelEventFinderTest::pullsStraight);
        double[] gear = new double[RECORDING.sampleCount()];
        Arrays.fill(gear, 0, at, 3.0);
        Arrays.fill(gear, at, gear.length, 4.0);
        Recording changed = rolling(at, SPELL, 0.3).with(Quantity.GEAR, Channel.of(gear));
        assertThat(near(changed, at)).isEmpty();
    }

    @Test
    void what_can_be_seen_is_said() {
        assertThat(find(RECORDING))
                .extracting(WheelEvidence::locksSeen, WheelEvidence::spinSeen, WheelEvidence::insideSeen)
                .containsExactly(true, true, true);
        assertThat(find(rolling(0, 0, 0.0)))
                .extracting(WheelEvidence::locksSeen, WheelEvidence::spinSeen, WheelEvidence::insideSeen)
                .containsExactly(false, true, false);
        WheelEvidence nothing = find(DRIVEN.recording(Set.copyOf(WHEELS)));
        assertThat(nothing)
                .extracting(WheelEvidence::locksSeen, WheelEvidence::spinSeen, WheelEvidence::insideSeen)
                .containsExactly(false, false, false);
        assertThat(nothing.events()).isEmpty();
    }

    private static boolean brakesStraight(int i) {
        return TRACE.brake().get(i) > 0.3
                && TRACE.speed().get(i) > 20.0
                && Math.abs(TRACE.lateral().get(i)) < 1.0;
    }

    private static boolean trails(int i) {
        return TRACE.brake().get(i) > 0.06 && Math.abs(TRACE.lateral().get(i)) > 3.5;
    }

    private static boolean pullsInABend(int i) {
        return pulls(i) && Math.abs(TRACE.lateral().get(i)) > 3.5;
    }

    private static boolean pullsStraight(int i) {
        return pulls(i) && Math.abs(TRACE.lateral().get(i)) < 1.0;
    }

    private static boolean pulls(int i) {
        return TRACE.throttle().get(i) > 0.3 && TRACE.brake().get(i) < 0.02;
    }

    /** First sample of a spell of the second good lap that is so throughout. */
    private static int where(IntPredicate so) {
        Lap lap = BEFORE.goodLaps().get(1);
        return IntStream.range(lap.from(), lap.to() - SPELL)
                .filter(i -> IntStream.range(i, i + SPELL).allMatch(so))
                .findFirst()
                .orElseThrow();
    }

    /** What is found when the wheels of an axle slip like that for a spell; they are called by the bend they are in. */
    private static List<WheelEvent.Kind> axle(int at, int leftWheel, double inner, double outer) {
        boolean left = TRACE.lateral().get(at) > 0.0;
        Recording one = slipping(RECORDING, at, SPELL, leftWheel, left ? inner : outer);
        Recording both = slipping(one, at, SPELL, leftWheel + 1, left ? outer : inner);
        return near(both, at).stream().map(WheelEvent::kind).toList();
    }

    private static Recording slipping(Recording recording, int at, int count, int wheel, double slip) {
        double half = 0.5
                * (wheel < REAR ? DRIVEN.sheet().trackFrontM() : DRIVEN.sheet().trackRearM());
        double toLeft = wheel % 2 == 0 ? half : -half;
        double[] speed = recording.channel(WHEELS.get(wheel)).toArray();
        for (int i = at; i < at + count; i++) {
            speed[i] = (1.0 + slip)
                    * (TRACE.speed().get(i) - toLeft * TRACE.yawRate().get(i));
        }
        return recording.with(WHEELS.get(wheel), Channel.of(speed));
    }

    private static List<WheelEvent> engine(int at, int count, double slip) {
        return near(rolling(at, count, slip), at);
    }

    /** Without wheel speeds; one gear, in which the engine turns with the road but for a spell. */
    private static Recording rolling(int at, int count, double slip) {
        double[] gear = new double[RECORDING.sampleCount()];
        double[] engine = RECORDING.channel(Quantity.SPEED).toArray();
        Arrays.fill(gear, 3.0);
        for (int i = 0; i < engine.length; i++) {
            engine[i] *= 14.0 * (i >= at && i < at + count ? 1.0 + slip : 1.0);
        }
        return DRIVEN.recording(Set.copyOf(WHEELS))
                .with(Quantity.GEAR, Channel.of(gear))
                .with(Quantity.ENGINE_SPEED, Channel.of(engine));
    }

    /** Neither laps nor trace depend on wheels or engine. */
    private static WheelEvidence find(Recording recording) {
        Stint stint = new Stint(recording, BEFORE.circuit(), BEFORE.laps(), BEFORE.station(), BEFORE.offset());
        return WheelEventFinder.find(stint, TRACE, DRIVEN.sheet());
    }

    private static List<WheelEvent> near(Recording recording, int at) {
        double when = at * RECORDING.stepS();
        return find(recording).events().stream()
                .filter(event -> Math.abs(event.timeS() - when) < 0.1)
                .toList();
    }
}
