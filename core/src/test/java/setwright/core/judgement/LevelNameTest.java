package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.handling.Phase;

final class LevelNameTest {
    private static final double SURE_DEG = 0.001;

    private static BelievedLevel level(Phase phase, SpeedRange speed, double deg, double deviationDeg) {
        return new BelievedLevel(phase, speed, Math.toRadians(deg), Math.toRadians(deviationDeg), Math.toRadians(deg));
    }

    private static List<BelievedLevel> mid(double low, double high, double all, double deviationDeg) {
        return new ArrayList<>(List.of(
                level(Phase.MID, SpeedRange.LOW, low, deviationDeg),
                level(Phase.MID, SpeedRange.HIGH, high, deviationDeg),
                level(Phase.MID, SpeedRange.ALL, all, deviationDeg),
                level(Phase.EXIT, SpeedRange.ALL, 0.02, deviationDeg)));
    }

    /** What is known without doubt is called by the definitions. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.5, 0.5, ALL",
        "0.4, 0.5, 0.45, ALL",
        "-0.4, -0.5, -0.45, ALL",
        "0.5, 0.05, 0.2, LOW",
        "0.05, 0.5, 0.2, HIGH",
        "-0.3, 0.5, 0.4, HIGH",
    })
    void whatIsSureIsCalledByTheDefinitions(double low, double high, double all, SpeedRange speed) {
        BelievedLevel named = LevelName.of(mid(low, high, all, SURE_DEG)).orElseThrow();
        assertThat(named.phase()).isEqualTo(Phase.MID);
        assertThat(named.speed()).isEqualTo(speed);
    }

    /** Of two fast corners that happen to show more nobody says that the slow ones are free of it. */
    @Test
    void anEndThatIsLittleKnownDoesNotTakeTheNameFromAllCorners() {
        List<BelievedLevel> levels = List.of(
                level(Phase.MID, SpeedRange.LOW, 0.22, 0.04),
                level(Phase.MID, SpeedRange.HIGH, 0.30, 0.25),
                level(Phase.MID, SpeedRange.ALL, 0.26, 0.04));
        assertThat(LevelName.of(levels).orElseThrow().speed()).isEqualTo(SpeedRange.ALL);
        List<BelievedLevel> known = List.of(
                level(Phase.MID, SpeedRange.LOW, 0.22, 0.02),
                level(Phase.MID, SpeedRange.HIGH, 0.40, 0.02),
                level(Phase.MID, SpeedRange.ALL, 0.26, 0.02));
        assertThat(LevelName.of(known).orElseThrow().speed()).isEqualTo(SpeedRange.HIGH);
    }

    /** The exit is the largest by a hair; the middle is the larger in most of what may be. */
    @Test
    void aPhaseThatIsLittleKnownDoesNotTakeTheNameEither() {
        List<BelievedLevel> levels =
                List.of(level(Phase.MID, SpeedRange.ALL, 0.38, 0.03), level(Phase.EXIT, SpeedRange.ALL, 0.40, 0.25));
        assertThat(LevelName.of(levels).orElseThrow().phase()).isEqualTo(Phase.MID);
    }

    @Test
    void theSameLevelsGetTheSameNameAndNoneGetsNone() {
        List<BelievedLevel> levels = mid(0.3, 0.25, 0.2, 0.2);
        assertThat(LevelName.of(levels)).isEqualTo(LevelName.of(levels)).isPresent();
        assertThat(LevelName.of(List.of())).isEmpty();
    }
}
