package setwright.core.technique;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Equilibrium;
import setwright.core.car.model.SteadyState;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;

final class AdmissibleTest {
    private static final double SPEED = 25.0;
    private static final double LATERAL = 7.0;

    @ParameterizedTest
    @EnumSource(DrivenAxle.class)
    void moreBrakeIsNeverTheCureOfARearThatStepsOut(DrivenAxle driven) {
        for (Phase phase : Phase.values()) {
            for (Lever lever : new Lever[] {Lever.BRAKE_AT_TURN_IN, Lever.OVERLAP}) {
                assertThat(Admissible.of(phase, BalanceSign.OVERSTEER, lever, driven))
                        .isIn(Direction.LESS, Direction.NONE);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(DrivenAxle.class)
    void whatComesAfterIsNoCause(DrivenAxle driven) {
        for (BalanceSign balance : BalanceSign.values()) {
            for (Phase phase : new Phase[] {Phase.BRAKING, Phase.ENTRY, Phase.MID}) {
                assertThat(Admissible.of(phase, balance, Lever.PICK_UP, driven)).isEqualTo(Direction.NONE);
                assertThat(Admissible.of(phase, balance, Lever.OPENING, driven)).isEqualTo(Direction.NONE);
            }
            assertThat(Admissible.of(Phase.EXIT, balance, Lever.OVERLAP, driven))
                    .isEqualTo(Direction.NONE);
        }
    }

    /** The four-wheel car says the same of the two rows that matter most: braking frees the rear, a front that drives is pulled wide. */
    @Test
    void theModelOfTheCarAgrees() {
        for (DrivenAxle driven : new DrivenAxle[] {DrivenAxle.FRONT, DrivenAxle.REAR}) {
            assertThat(balance(driven, -5.0)).isLessThan(balance(driven, 0.0));
        }
        assertThat(balance(DrivenAxle.FRONT, 2.0)).isGreaterThan(balance(DrivenAxle.FRONT, 0.0));
        assertThat(balance(DrivenAxle.REAR, 2.0)).isLessThan(balance(DrivenAxle.FRONT, 2.0));
    }

    /** Slip of the front less that of the rear, rad. */
    private static double balance(DrivenAxle driven, double forwardMps2) {
        CarSheet sheet = Sheets.plain(driven, 1200.0, 0.5, 2.6, 14.0, 0.45);
        SteadyState state = new Equilibrium(
                        new CarAssembler(sheet)
                                .build(CarBelief.of(CarPrior.of(sheet)).middle()),
                        Equilibrium.Axes.PATH)
                .at(SPEED, forwardMps2, LATERAL)
                .orElseThrow();
        return Math.abs(state.frontSlipRad()) - Math.abs(state.rearSlipRad());
    }
}
