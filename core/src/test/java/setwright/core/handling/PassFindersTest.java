package setwright.core.handling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import setwright.core.circuit.Corner;

/** Events, phases, hands and habits on a pass whose pedals and wheel are given as functions of time. */
final class PassFindersTest {
    private static final double STEP_S = 0.02;
    private static final int SAMPLES = 400;
    private static final double SPEED = 25.0;
    private static final double MOST_LOCK = 0.08;
    private static final double NOISE_RAD = 0.0005;

    /** Wheel turned in from 3 s to 4 s, held, straightened from 6 s to 7 s. */
    private static double wheel(double t) {
        double in = Math.max(0.0, Math.min(1.0, t - 3.0));
        double out = Math.max(0.0, Math.min(1.0, 7.0 - t));
        return MOST_LOCK * Math.min(smooth(in), smooth(out));
    }

    private static double smooth(double x) {
        return x * x * (3.0 - 2.0 * x);
    }

    private static PassWindow pass(
            DoubleUnaryOperator steer,
            DoubleUnaryOperator path,
            DoubleUnaryOperator brake,
            DoubleUnaryOperator throttle) {
        double[][] c = new double[12][SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            double t = k * STEP_S;
            c[0][k] = SPEED * t;
            c[2][k] = SPEED + 2.0 * Math.pow(t - 5.0, 2) / 10.0;
            c[3][k] = steer.applyAsDouble(t);
            c[4][k] = path.applyAsDouble(t) * c[2][k] / 2.5;
            c[5][k] = path.applyAsDouble(t) * c[2][k] * c[2][k] / 2.5;
            c[7][k] = brake.applyAsDouble(t);
            c[8][k] = throttle.applyAsDouble(t);
            c[9][k] = steer.applyAsDouble(t) - path.applyAsDouble(t);
            c[11][k] = 25.0;
        }
        Corner corner = new Corner(1, Corner.Direction.LEFT, 0.0, 75.0, 125.0, 175.0, SPEED * SAMPLES * STEP_S);
        return new PassWindow(
                1, corner, STEP_S, 0.0, c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9], c[10], c[11]);
    }

    private static double pressed(double t, double from, double to, double level) {
        return t >= from && t <= to ? level : 0.0;
    }

    private static PassWindow ordinary() {
        return pass(
                PassFindersTest::wheel,
                PassFindersTest::wheel,
                t -> pressed(t, 1.5, 3.6, 0.8),
                t -> t < 1.4 ? 1.0 : Math.max(0.0, Math.min(1.0, t - 5.2)));
    }

    @Test
    void findsTheEventsInDrivingOrder() {
        PassMarks marks = MarkFinder.find(ordinary());

        assertThat(marks.brakeOn() * STEP_S).isBetween(1.48, 1.54);
        assertThat(marks.turnIn() * STEP_S).isBetween(3.0, 3.3);
        assertThat(marks.brakeOff() * STEP_S).isBetween(3.56, 3.64);
        assertThat(marks.lowestSpeed() * STEP_S).isBetween(4.9, 5.1);
        assertThat(marks.throttlePickUp() * STEP_S).isBetween(5.2, 5.4);
        assertThat(marks.fullThrottle() * STEP_S).isBetween(6.1, 6.3);
        assertThat(marks.steerStraight() * STEP_S).isBetween(6.6, 7.0);
    }

    @Test
    void aFootThatOpensSlowlyHasPickedUpAllTheSame() {
        PassWindow pass = pass(
                PassFindersTest::wheel,
                PassFindersTest::wheel,
                t -> pressed(t, 1.5, 3.6, 0.8),
                t -> t < 1.4 ? 1.0 : Math.max(0.0, 0.15 * (t - 4.0)));
        PassMarks marks = MarkFinder.find(pass);

        // a tenth of the pedal beyond what counts as closed is reached 0.8 s after it begins to open
        assertThat(marks.throttlePickUp() * STEP_S).isBetween(4.7, 4.95);
    }

    @Test
    void phasesFollowEachOtherWithoutGap() {
        PassWindow pass = ordinary();
        Map<Phase, PhaseSplitter.Range> phases = PhaseSplitter.split(pass, MarkFinder.find(pass));

        assertThat(phases).containsOnlyKeys(Phase.BRAKING, Phase.ENTRY, Phase.MID, Phase.EXIT);
        assertThat(phases.get(Phase.BRAKING).to())
                .isEqualTo(phases.get(Phase.ENTRY).from());
        assertThat(phases.get(Phase.ENTRY).to()).isEqualTo(phases.get(Phase.MID).from());
        assertThat(phases.get(Phase.MID).to()).isEqualTo(phases.get(Phase.EXIT).from());
    }

    @Test
    void aFlatOutKinkStillHasPhases() {
        PassWindow pass = pass(PassFindersTest::wheel, PassFindersTest::wheel, t -> 0.0, t -> 1.0);
        PassMarks marks = MarkFinder.find(pass);

        assertThat(marks.brakeOn()).isEqualTo(-1);
        assertThat(marks.throttlePickUp()).isEqualTo(-1);
        assertThat(PhaseSplitter.split(pass, marks)).containsOnlyKeys(Phase.ENTRY, Phase.MID, Phase.EXIT);
    }

    @Test
    void aSteadyCornerShowsNoGesture() {
        PassWindow pass = ordinary();

        assertThat(hands(pass)).isEmpty();
    }

    @Test
    void aDipOfTheWheelAgainstThePathIsACorrection() {
        PassWindow pass = pass(
                t -> wheel(t) - 0.03 * Math.exp(-Math.pow((t - 4.8) / 0.15, 2)),
                PassFindersTest::wheel,
                t -> 0.0,
                t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).anySatisfy(event -> {
            assertThat(event.kind()).isEqualTo(HandsEvent.Kind.CORRECTION);
            assertThat(event.sizeRad()).isBetween(0.8 * 0.03 * 12.0, 1.1 * 0.03 * 12.0);
        });
    }

    @Test
    void aDipThatThePathFollowsIsNone() {
        DoubleUnaryOperator both = t -> wheel(t) - 0.03 * Math.exp(-Math.pow((t - 4.8) / 0.15, 2));
        PassWindow pass = pass(both, both, t -> 0.0, t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).noneMatch(event -> event.kind() == HandsEvent.Kind.CORRECTION);
    }

    @Test
    void moreLockWithoutATighterPathIsWindingOn() {
        PassWindow pass = pass(PassFindersTest::woundOn, PassFindersTest::wheel, t -> 0.0, t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).anyMatch(event -> event.kind() == HandsEvent.Kind.WIND_ON);
    }

    @Test
    void moreLockWhileThePathTightensEverSoLittleIsNone() {
        PassWindow pass = pass(
                PassFindersTest::woundOn,
                t -> wheel(t) * (1.0 + 0.03 * Math.max(0.0, t - 4.0)),
                t -> 0.0,
                t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).noneMatch(event -> event.kind() == HandsEvent.Kind.WIND_ON);
    }

    @Test
    void lockThatOnlyComesBackToWhatTheCarAsksForIsNoWindingOn() {
        DoubleUnaryOperator slide = t -> wheel(t) - 0.03 * Math.exp(-Math.pow((t - 4.8) / 0.15, 2));
        PassWindow pass = pass(slide, PassFindersTest::wheel, t -> 0.0, t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).noneMatch(event -> event.kind() == HandsEvent.Kind.WIND_ON);
    }

    @Test
    void aWheelThatWasNeverMovedQuicklyIsNotHeld() {
        // turned in by 0.3 s before the path, then still to the apex and beyond
        PassWindow pass = pass(
                t -> t < 5.5 ? MOST_LOCK * smooth(Math.max(0.0, Math.min(1.0, (t - 2.0) / 0.8))) : wheel(t),
                PassFindersTest::wheel,
                t -> 0.0,
                t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).noneMatch(event -> event.kind() == HandsEvent.Kind.HOLD);
    }

    @Test
    void aWheelThatWaitsWhileThePathTightensIsAHold() {
        PassWindow pass = pass(
                t -> {
                    double late = t < 3.5 ? t : t < 3.9 ? 3.5 : t - 0.4;
                    return t < 6.0 ? wheel(late) : wheel(t);
                },
                PassFindersTest::wheel,
                t -> 0.0,
                t -> Math.max(0.0, t - 5.5));

        assertThat(hands(pass)).anyMatch(event -> event.kind() == HandsEvent.Kind.HOLD);
    }

    @Test
    void habitsAreMeasured() {
        PassWindow pass = pass(
                PassFindersTest::wheel,
                PassFindersTest::wheel,
                t -> pressed(t, 1.5, 4.8, t < 3.2 ? 0.8 : 0.15),
                t -> t < 1.4 ? 1.0 : t < 5.4 ? 0.0 : t < 5.8 ? 0.6 : t < 6.1 ? 0.2 : 1.0);
        Habits habits = HabitsFinder.find(pass, MarkFinder.find(pass), 0.0, 12.0, Traction.ALL);

        assertThat(habits.brakeHeldS()).isBetween(0.7, 1.2);
        assertThat(habits.brakeHeld()).isBetween(0.14, 0.16);
        assertThat(habits.liftAfter()).isBetween(0.35, 0.45);
        assertThat(habits.coastS()).isBetween(0.5, 0.7);
        assertThat(habits.overlapS()).isZero();
    }

    private static double woundOn(double t) {
        return wheel(t) + 0.03 * smooth(Math.max(0.0, Math.min(1.0, (t - 4.4) / 0.5))) * (t < 6.0 ? 1.0 : 0.0);
    }

    private static List<HandsEvent> hands(PassWindow pass) {
        PassMarks marks = MarkFinder.find(pass);
        return HandsFinder.find(pass, marks, PhaseSplitter.split(pass, marks), 12.0, NOISE_RAD);
    }
}
