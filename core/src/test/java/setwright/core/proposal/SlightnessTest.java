package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.proposal.Refusal.Kind;

/** A quarter of a typical setup change is 0.14 deg, and runs of 90 s differ by 0.09 s, by the yardstick's own figures. */
final class SlightnessTest {
    @ParameterizedTest
    @CsvSource({
        "0.04, 0.000, true",
        "0.04, 0.004, true",
        "0.04, 0.006, false",
        "0.13, -0.01, true",
        "0.15, -0.01, false",
        "-0.30, 0.001, true"
    })
    void whatDoesNothingThatShowsIsRefused(double movedDeg, double gainedS, boolean refused) {
        assertThat(Slightness.refusal(Math.toRadians(movedDeg), gainedS).map(Refusal::kind))
                .isEqualTo(refused ? Optional.of(Kind.TOO_LITTLE) : Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"0.04, 0.02, true", "0.13, 0.08, true", "0.13, 0.10, false", "0.15, 0.02, false"})
    void whatTwoRunsDifferByIsSaidToBeLittle(double movedDeg, double gainedS, boolean warned) {
        assertThat(Slightness.warning(Math.toRadians(movedDeg), gainedS, 90.0).isPresent())
                .isEqualTo(warned);
    }
}
