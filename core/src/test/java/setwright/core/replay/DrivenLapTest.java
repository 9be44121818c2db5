package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.core.car.Sheets;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Drive;
import setwright.core.recording.Channel;

final class DrivenLapTest {
    private final Diagnosis diagnosis =
            Diagnostician.diagnose(new Drive(6L).laps(3).stint(), Sheets.adjustable());
    private final double length = diagnosis.stint().circuit().line().lengthM();

    private List<DrivenLap> laps(List<CornerPass> passes) {
        return DrivenLap.of(diagnosis.stint(), diagnosis.trace(), passes);
    }

    @Test
    void takesEveryGoodLapAtTwentyFiveMomentsASecond() {
        List<DrivenLap> laps = laps(diagnosis.passes());
        assertThat(laps).extracting(DrivenLap::number).containsExactly(1, 2, 3);
        assertThat(laps).allSatisfy(lap -> {
            assertThat(lap.stepS()).isCloseTo(0.04, within(1.0e-12));
            assertThat(lap.size() * lap.stepS())
                    .isCloseTo(
                            diagnosis.stint().goodLaps().get(lap.number() - 1).timeS(), within(0.04));
        });
    }

    @Test
    void beforeTheFirstApproachTheLastCornerGoesOn() {
        // corner 1 of the ring has its approach 80 m after the line, the others 420 m apart
        DrivenLap lap = laps(diagnosis.passes()).get(1);
        for (int k = 0; k < lap.size(); k++) {
            double since = (lap.station()[k] - 80.0 + length) % length;
            assertThat(lap.corner()[k]).as("at %s m", lap.station()[k]).isEqualTo((int) (since / 420.0));
        }
    }

    @Test
    void aPhaseMayLieAcrossTheLineOnEitherSide() {
        CornerPass pass = diagnosis.passes().stream()
                .filter(own -> own.lap() == 2)
                .findFirst()
                .orElseThrow();
        PhaseBalance beyond = from(pass, length - 50.0, length + 30.0);
        PhaseBalance before = from(pass, -50.0, 30.0);
        for (PhaseBalance across : List.of(beyond, before)) {
            DrivenLap lap = laps(List.of(with(pass, across))).get(1);
            for (int k = 0; k < lap.size(); k++) {
                double at = lap.station()[k];
                boolean inside = at >= length - 50.0 || at < 30.0;
                assertThat(lap.phase()[k]).as("at %s m", at).isEqualTo(inside ? EffectLayout.index(Phase.EXIT) : -1);
            }
        }
    }

    @Test
    void aLapWithAGapIsLeftOut() {
        HandlingTrace trace = diagnosis.trace();
        double[] speed = trace.speed().toArray();
        speed[diagnosis.stint().goodLaps().get(1).from() + 10] = Double.NaN;
        HandlingTrace gap = new HandlingTrace(
                Channel.of(speed),
                trace.steer(),
                trace.yawRate(),
                trace.yawAcceleration(),
                trace.lateral(),
                trace.forward(),
                trace.brake(),
                trace.throttle(),
                trace.balance(),
                trace.reference(),
                trace.use(),
                trace.car(),
                trace.balanceNoiseRad(),
                trace.steering(),
                trace.yawMeasured());
        assertThat(DrivenLap.of(diagnosis.stint(), gap, diagnosis.passes()))
                .extracting(DrivenLap::number)
                .containsExactly(1, 3);
    }

    private static PhaseBalance from(CornerPass pass, double fromM, double toM) {
        PhaseBalance any = pass.phases().values().iterator().next();
        return new PhaseBalance(
                Phase.EXIT,
                fromM,
                toM,
                any.timeS(),
                any.balanceRad(),
                any.referenceRad(),
                any.referenceDoubtRad(),
                any.frontUse(),
                any.rearUse(),
                any.lateralMps2(),
                any.speedMps());
    }

    private static CornerPass with(CornerPass pass, PhaseBalance only) {
        return new CornerPass(
                pass.lap(),
                pass.corner(),
                pass.speedClass(),
                pass.events(),
                pass.turnInTimeS(),
                Map.of(only.phase(), only),
                pass.slides(),
                pass.hands(),
                pass.habits(),
                pass.shapes(),
                pass.entrySpeedMps(),
                pass.lowestSpeedMps(),
                pass.exitSpeedMps(),
                pass.timeS(),
                pass.brakeAtTurnIn());
    }
}
