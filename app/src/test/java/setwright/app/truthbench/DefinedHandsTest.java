package setwright.app.truthbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.simulation.driven.DriveHistory;
import setwright.core.simulation.driven.Signal;

/** The definitions on a bend of which every signal is given. */
final class DefinedHandsTest {
    private static final double STEP_S = 0.004;
    private static final double WHEELBASE_M = 2.5;
    private static final double SPEED_MPS = 25.0;
    private static final double MOST_LOCK = 0.08;
    private static final double QUIET = 0.4;
    private static final double AT_LIMIT = 0.8;

    /** Into the bend from 1 s to 2 s, out of it from 4 s to 5 s. */
    private static double bend(double t) {
        return MOST_LOCK * Math.min(smooth(t - 1.0), smooth(5.0 - t));
    }

    private static double smooth(double x) {
        double in = Math.max(0.0, Math.min(1.0, x));
        return in * in * (3.0 - 2.0 * in);
    }

    private static double dip(double t) {
        return 0.02 * Math.exp(-Math.pow((t - 3.0) / 0.12, 2));
    }

    private static List<Kind> kinds(DoubleUnaryOperator lock, DoubleUnaryOperator path, double front, double rear) {
        return DefinedHands.in(drive(lock, path, front, rear), WHEELBASE_M).stream()
                .map(TrueGesture::kind)
                .toList();
    }

    /** A right-hand bend: all that turns is negative. */
    private static DriveHistory drive(DoubleUnaryOperator lock, DoubleUnaryOperator path, double front, double rear) {
        DriveHistory.Builder builder = new DriveHistory.Builder(STEP_S);
        for (int k = 0; k * STEP_S < 6.0; k++) {
            double t = k * STEP_S;
            double curvature = path.applyAsDouble(t) / WHEELBASE_M;
            double[] sample = new double[Signal.count()];
            sample[Signal.STEER.index()] = -lock.applyAsDouble(t);
            sample[Signal.FORWARD_SPEED.index()] = SPEED_MPS;
            sample[Signal.YAW_RATE.index()] = -curvature * SPEED_MPS;
            sample[Signal.LATERAL_ACCELERATION.index()] = -curvature * SPEED_MPS * SPEED_MPS;
            sample[Signal.USE_FRONT.index()] = front;
            sample[Signal.USE_REAR.index()] = rear;
            builder.add(sample);
        }
        return builder.build();
    }

    @Test
    void an_ordinary_bend_holds_none() {
        assertThat(kinds(DefinedHandsTest::bend, DefinedHandsTest::bend, AT_LIMIT, AT_LIMIT))
                .isEmpty();
    }

    @Test
    void a_dip_is_a_correction_where_the_rear_slides_and_the_path_does_not_follow() {
        assertThat(kinds(t -> bend(t) - dip(t), DefinedHandsTest::bend, QUIET, AT_LIMIT))
                .containsExactly(Kind.CORRECTION);
        assertThat(kinds(t -> bend(t) - dip(t), DefinedHandsTest::bend, QUIET, QUIET))
                .isEmpty();
        assertThat(kinds(t -> bend(t) - dip(t), t -> bend(t) - dip(t), QUIET, AT_LIMIT))
                .isEmpty();
    }

    @Test
    void growing_lock_is_wound_on_where_the_front_slides_and_the_path_does_not_tighten() {
        DoubleUnaryOperator more = t -> bend(t) + (t < 4.0 ? 0.02 * smooth((t - 2.6) / 0.5) : 0.0);
        assertThat(kinds(more, DefinedHandsTest::bend, AT_LIMIT, QUIET)).containsExactly(Kind.WIND_ON);
        assertThat(kinds(more, DefinedHandsTest::bend, QUIET, QUIET)).isEmpty();
        assertThat(kinds(more, more, AT_LIMIT, QUIET)).isEmpty();
    }

    @Test
    void a_wheel_that_waits_while_the_path_tightens_is_held() {
        DoubleUnaryOperator waits = t -> bend(t < 1.5 ? t : t < 1.8 ? 1.5 : t < 3.0 ? t - 0.3 : t);
        assertThat(kinds(waits, DefinedHandsTest::bend, QUIET, QUIET)).containsExactly(Kind.HOLD);
        assertThat(kinds(waits, waits, QUIET, QUIET)).isEmpty();
    }
}
