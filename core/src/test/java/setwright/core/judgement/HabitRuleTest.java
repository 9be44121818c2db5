package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.recording.Quantity;

/** Faults of the feet that are put into some corners of a drive without any, and what comes near them. */
final class HabitRuleTest {
    private static final String AGAIN = "brake squeezed again after easing";
    private static final String BOTH = "throttle and brake together";
    private static final String COASTING = "coasting with neither pedal";
    private static final String LIMITER = "on the engine's limiter";

    @ParameterizedTest
    @ValueSource(strings = {AGAIN, BOTH, COASTING, LIMITER})
    void aDriveWithoutThemHasNone(String kind) {
        assertThat(new ScriptedFeet().fault(kind)).isEmpty();
        assertThat(new ScriptedFeet().applyingSlowly().fault(kind)).isEmpty();
    }

    @Test
    void aBrakeSqueezedAgainIsFoundFromASixthOfThePedalOn() {
        shown(squeezed(0.45), AGAIN, 0.3, 0.36);
        assertThat(squeezed(0.2).fault(AGAIN)).isEmpty();
    }

    @Test
    void bothPedalsAreFoundFromAFifthOfASecondOn() {
        shown(throttle(-1.0, -0.5, 0.3), BOTH, 0.44, 0.56);
        assertThat(throttle(-1.0, -0.9, 0.3).fault(BOTH)).isEmpty();
        assertThat(throttle(-1.0, -0.5, 0.07).fault(BOTH)).as("a resting foot").isEmpty();
    }

    @Test
    void coastingIsFoundFromHalfASecondOn() {
        shown(throttle(0.0, 1.2, 0.0), COASTING, 0.6, 1.0);
        assertThat(throttle(0.0, 0.7, 0.0).fault(COASTING)).isEmpty();
    }

    @Test
    void theLimiterIsFoundFromASeventhOfASecondOn() {
        shown(engine(0.3, 800.0), LIMITER, 0.27, 0.33);
        assertThat(engine(0.1, 800.0).fault(LIMITER)).isEmpty();
        assertThat(engine(0.3, 790.0).fault(LIMITER)).isEmpty();
    }

    /** It shows in every pass of the corners it was put into and nowhere else; five of eight are a habit. */
    private static void shown(ScriptedFeet feet, String kind, double least, double most) {
        assertThat(feet.fault(kind)).hasValueSatisfying(fault -> {
            assertThat(fault.corners()).isEqualTo(List.of(1, 2, 3, 4, 5));
            assertThat(fault.lapShare()).isGreaterThan(0.9);
            assertThat(fault.size()).isBetween(least, most);
            assertThat(fault.habit()).isTrue();
            assertThat(fault.proofs())
                    .allSatisfy(proof ->
                            assertThat(proof.laps()).hasSizeGreaterThan(6).contains(proof.worstLap()));
        });
    }

    private static boolean some(int corner) {
        return corner <= 5;
    }

    /** Eased to a tenth before the corner is tight, and pressed to so much in half a second. */
    private static ScriptedFeet squeezed(double level) {
        return new ScriptedFeet()
                .applyingSlowly()
                .writing(
                        Quantity.BRAKE,
                        HabitRuleTest::some,
                        -0.4,
                        0.7,
                        t -> t < 0.3
                                ? 0.1 + (level - 0.1) * Math.max(0.0, (t + 0.2) / 0.5)
                                : Math.max(0.0, level * (0.6 - t) / 0.3));
    }

    private static ScriptedFeet throttle(double fromS, double toS, double level) {
        return new ScriptedFeet().writing(Quantity.THROTTLE, HabitRuleTest::some, fromS, toS, t -> level);
    }

    private static ScriptedFeet engine(double seconds, double radPerS) {
        return new ScriptedFeet().writing(Quantity.ENGINE_SPEED, HabitRuleTest::some, 0.5, 0.5 + seconds, t -> radPerS);
    }
}
