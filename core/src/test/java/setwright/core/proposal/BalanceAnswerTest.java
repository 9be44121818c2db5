package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;

class BalanceAnswerTest {
    private static final Effect SURE = new Effect(rad(0.28), rad(0.25), rad(0.31), 1.0);

    @Test
    void aShareIsSeenWhateverTheSign() {
        assertThat(BalanceAnswer.seen(rad(0.28))).isCloseTo(rad(0.196), within(1e-12));
        assertThat(BalanceAnswer.seen(rad(-0.28))).isCloseTo(-rad(0.196), within(1e-12));
    }

    @Test
    void aSureReplayIsNoSureAnswer() {
        Effect answered = BalanceAnswer.to(SURE);
        assertThat(answered.deviation()).isGreaterThan(answered.central());
        assertThat(answered.probabilityPositive()).isCloseTo(0.92, within(1e-12));
        assertThat(answered.signSure()).isTrue();
        assertThat(BalanceAnswer.to(new Effect(rad(0.28), rad(0.0), rad(0.5), 0.5))
                        .probabilityPositive())
                .as("what nobody knows stays unknown")
                .isCloseTo(0.5, within(1e-12));
    }

    /** Half of what the replay says, as in one simulation, and twice as much, as in the other. */
    @Test
    void theIntervalHoldsADriverWhoGivesInAndOneWhoLeansOnIt() {
        for (double sign : new double[] {1.0, -1.0}) {
            Effect answered = BalanceAnswer.to(SURE.times(sign)).times(sign);
            assertThat(answered.low()).isLessThan(rad(0.05));
            assertThat(answered.high()).isGreaterThan(rad(0.56));
            assertThat(answered.high() - answered.central()).isGreaterThan(1.8 * (answered.central() - answered.low()));
        }
    }

    @Test
    void aDoubtfulReplayLeavesTheWiderInterval() {
        Effect doubtful = new Effect(rad(0.28), rad(-0.2), rad(0.8), 0.75);
        assertThat(BalanceAnswer.to(doubtful).deviation())
                .isGreaterThan(BalanceAnswer.to(SURE).deviation());
    }

    @Test
    void whereTheReplayPromisesNothingSomethingIsLeftUnseen() {
        Effect answered = BalanceAnswer.to(new Effect(0.0, 0.0, 0.0, 0.5));
        assertThat(answered.central()).isZero();
        assertThat(answered.high()).isCloseTo(rad(0.0256), within(rad(0.0001)));
    }

    @Test
    void gapsAlongTheLapStayGaps() {
        Channel gap = Channel.of(new double[] {Double.NaN, rad(0.28)});
        BalanceAnswer.Curves curves = BalanceAnswer.to(gap, gap, gap);
        assertThat(curves.balance().get(0)).isNaN();
        assertThat(curves.low().get(0)).isNaN();
        assertThat(curves.low().get(1)).isLessThan(curves.balance().get(1));
    }

    private static double rad(double deg) {
        return Math.toRadians(deg);
    }
}
