package setwright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Findings;
import setwright.core.judgement.SpeedRange;
import setwright.core.proposal.Candidate.PoolGain;
import setwright.core.recording.Channel;
import setwright.core.replay.Effect;
import setwright.core.replay.LapEffect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Pool;
import setwright.core.replay.Prediction;

final class HarmTest {
    private static final Finding SLOW_MID = Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.LOW);

    private static final Prediction NOTHING = moving(Phase.MID, SpeedClass.LOW, 0.0);

    private static Prediction moving(Phase phase, SpeedClass speed, double degrees) {
        double rad = Math.toRadians(degrees);
        Channel none = Channel.of(new double[] {0.0});
        return new Prediction(
                List.of(),
                List.of(),
                List.of(new PhaseEffect(phase, Optional.of(speed), new Effect(rad, rad - 0.001, rad + 0.001, 0.5))),
                new Effect(0.0, 0.0, 0.0, 0.5),
                List.of(1.0),
                new LapEffect(none, none, none, none, none, none),
                List.of(),
                List.of());
    }

    private static PoolGain gain(Phase phase, SpeedClass speed, double seconds) {
        return new PoolGain(Pool.of(phase, speed), seconds);
    }

    @Test
    void aPhaseThatGetsWorseThanTheTargetGetsBetterIsNamed() {
        Refusal refusal = Harm.of(
                        List.of(
                                gain(Phase.MID, SpeedClass.LOW, 0.10),
                                gain(Phase.ENTRY, SpeedClass.HIGH, -0.11),
                                gain(Phase.EXIT, SpeedClass.LOW, -0.12)),
                        moving(Phase.EXIT, SpeedClass.LOW, -0.25),
                        SLOW_MID)
                .orElseThrow();
        assertThat(refusal.words())
                .isEqualTo("it would upset the balance " + Phase.EXIT.place()
                        + " in low-speed corners by 0.25 deg toward oversteer: by balance alone that costs 0.120 s a lap, and the"
                        + " target gains 0.100 s");
        assertThat(refusal.kind()).isEqualTo(Refusal.Kind.HARM);
        assertThat(refusal.where()).contains(Pool.of(Phase.EXIT, SpeedClass.LOW));
        assertThat(refusal.figures())
                .extracting(Refusal.Figure::name)
                .containsExactly("harm_balance_deg", "harm_s", "target_gain_s");
    }

    /** What rounds to nothing is not told as a cost. */
    @Test
    void harmThatDoesNotShowIsToldWithoutFigures() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, 0.0), gain(Phase.EXIT, SpeedClass.LOW, -0.0001)),
                        NOTHING,
                        SLOW_MID))
                .map(Refusal::words)
                .contains(
                        "the target gains nothing that shows, and the balance on the exit in low-speed corners gets a little worse");
    }

    @Test
    void aMoveThatDoesNotShowIsToldWithoutFigures() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, 0.0), gain(Phase.EXIT, SpeedClass.LOW, -0.001)),
                        moving(Phase.EXIT, SpeedClass.LOW, -0.004),
                        SLOW_MID))
                .map(Refusal::words)
                .hasValueSatisfying(words -> assertThat(words).endsWith("gets a little worse"));
    }

    @Test
    void smallerHarmIsBorne() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, 0.10), gain(Phase.EXIT, SpeedClass.LOW, -0.09)),
                        NOTHING,
                        SLOW_MID))
                .isEmpty();
    }

    @Test
    void theSamePhaseAtOtherSpeedsIsElsewhere() {
        List<PoolGain> gains = List.of(gain(Phase.MID, SpeedClass.LOW, 0.10), gain(Phase.MID, SpeedClass.HIGH, -0.2));
        assertThat(Harm.of(gains, NOTHING, SLOW_MID)).isPresent();
        assertThat(Harm.of(gains, NOTHING, Findings.mid(BalanceSign.UNDERSTEER, SpeedRange.ALL)))
                .isEmpty();
    }

    @Test
    void whatDoesNotHelpAtAllMayHarmNothing() {
        assertThat(Harm.of(
                        List.of(gain(Phase.MID, SpeedClass.LOW, -0.2), gain(Phase.EXIT, SpeedClass.LOW, -0.01)),
                        NOTHING,
                        SLOW_MID))
                .hasValueSatisfying(
                        refusal -> assertThat(refusal.words()).endsWith("the target gains nothing that shows"));
    }
}
