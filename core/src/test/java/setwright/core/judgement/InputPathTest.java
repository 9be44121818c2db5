package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.core.car.DrivenAxle;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.handling.Phase;

final class InputPathTest {
    private static final double ROUND_OFF = 1.0e-12;

    private static Map<Trigger, Double> of(String item, BalanceSign sign, DrivenAxle driven) {
        return InputPath.of(SetupCatalogue.find(item).orElseThrow(), sign, Phase.MID, driven, 0.4);
    }

    @Test
    void everyItemHasAPathOfWholeShares() {
        for (SetupItemKind kind : SetupCatalogue.all()) {
            for (BalanceSign sign : BalanceSign.values()) {
                for (Phase phase : Phase.values()) {
                    for (DrivenAxle driven : DrivenAxle.values()) {
                        assertThat(InputPath.of(kind, sign, phase, driven, 0.4).values().stream()
                                        .mapToDouble(share -> share)
                                        .sum())
                                .as(kind.name())
                                .isCloseTo(1.0, within(ROUND_OFF));
                    }
                }
            }
        }
    }

    /** Front and rear changed over, with the driven wheels and the sign: roll stiffness, tyres and toe know no difference. */
    @Test
    void carsThatMirrorEachOtherAreJudgedAlike() {
        for (String item : new String[] {"bar", "camber", "tyre_pressure", "toe"}) {
            assertThat(of("front_" + item, BalanceSign.UNDERSTEER, DrivenAxle.FRONT))
                    .as(item)
                    .isEqualTo(of("rear_" + item, BalanceSign.OVERSTEER, DrivenAxle.REAR));
            assertThat(of("front_" + item, BalanceSign.UNDERSTEER, DrivenAxle.REAR))
                    .as(item)
                    .isEqualTo(of("rear_" + item, BalanceSign.OVERSTEER, DrivenAxle.FRONT));
        }
    }

    @Test
    void aBrakeActsOnlyOnTheBrakeAndAWingAlways() {
        assertThat(of("brake_bias_front", BalanceSign.OVERSTEER, DrivenAxle.REAR))
                .isEqualTo(Map.of(Trigger.BRAKE_RELEASE, 1.0));
        assertThat(InputPath.of(
                        SetupCatalogue.find("brake_bias_front").orElseThrow(),
                        BalanceSign.OVERSTEER,
                        Phase.BRAKING,
                        DrivenAxle.REAR,
                        0.4))
                .isEqualTo(Map.of(Trigger.BRAKE_APPLICATION, 1.0));
        assertThat(of("rear_wing", BalanceSign.OVERSTEER, DrivenAxle.REAR)).isEqualTo(Map.of(Trigger.NONE, 1.0));
    }

    @Test
    void driveTakesFromTheGripOfTheDrivenAxleOnly() {
        assertThat(of("rear_bar", BalanceSign.OVERSTEER, DrivenAxle.REAR)).containsKey(Trigger.THROTTLE_PICK_UP);
        assertThat(of("rear_bar", BalanceSign.OVERSTEER, DrivenAxle.FRONT)).doesNotContainKey(Trigger.THROTTLE_PICK_UP);
        assertThat(of("front_bar", BalanceSign.UNDERSTEER, DrivenAxle.FRONT)).containsKey(Trigger.THROTTLE_PICK_UP);
    }
}
