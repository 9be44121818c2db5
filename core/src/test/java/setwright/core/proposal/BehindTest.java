package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From what is seen of a change back to what the replay would have had to promise. */
final class BehindTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.02, -0.1, 0.25, -0.3})
    void isTheWayBack(double seenDeg) {
        double seen = Math.toRadians(seenDeg);
        assertThat(BalanceAnswer.seen(BalanceAnswer.behind(seen))).isCloseTo(seen, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.34, 1.0, -2.0})
    void staysWithinBoundsBeyondWhatIsEverSeen(double seenDeg) {
        double behind = BalanceAnswer.behind(Math.toRadians(seenDeg));
        assertThat(Math.signum(behind)).isEqualTo(Math.signum(seenDeg));
        assertThat(Math.abs(Math.toDegrees(behind))).isLessThan(6.0);
        assertThat(Math.abs(behind)).isGreaterThan(Math.abs(BalanceAnswer.behind(Math.toRadians(0.3))));
    }
}
