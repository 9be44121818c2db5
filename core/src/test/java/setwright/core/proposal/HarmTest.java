package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.replay.Pool;

final class HarmTest {
    private static final Finding SLOW_MID = Targets.mid(BalanceSign.UNDERSTEER, SpeedRange.LOW);

    private static PoolGain gain(Phase phase, SpeedClass speed, double seconds) {
        return new PoolGain(Pool.of(phase, speed), seconds);
    }

    @Test
    void aPhaseThatGetsWorseThanTheTargetGetsBetterIsNamed() {
        assertThat(Harm.of(
                        List.of(
                                gain(Phase.MID, SpeedClass.LOW, 0.10),
                                gain(Phase.ENTRY, SpeedClass.HIGH, -0.11),
                                gain(Phase.EXIT, SpeedClass.LOW, -0.12)),
                        SLOW_MID))
                .contains("it would upset the balance " + Phase.EXIT.place() + " in low corners more than it helps");
    }

    @Test
    void smallerHarmIsBorne() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, 0.10), gain(Phase.EXIT, SpeedClass.LOW, -0.09)),
                        SLOW_MID))
                .isEmpty();
    }

    @Test
    void theSamePhaseAtOtherSpeedsIsElsewhere() {
        List<PoolGain> gains = List.of(gain(Phase.MID, SpeedClass.LOW, 0.10), gain(Phase.MID, SpeedClass.HIGH, -0.2));
        assertThat(Harm.of(gains, SLOW_MID)).isPresent();
        assertThat(Harm.of(gains, Targets.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL)))
                .isEmpty();
    }

    @Test
    void whatDoesNotHelpAtAllMayHarmNothing() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, -0.2), gain(Phase.EXIT, SpeedClass.LOW, -0.01)),
                        SLOW_MID))
                .isPresent();
    }
}
