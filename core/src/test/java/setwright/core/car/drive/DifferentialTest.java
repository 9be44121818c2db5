package setwright.core.car.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class DifferentialTest {
    private static final double RADIUS_M = 0.3;
    private static final double STIFFNESS_N = 60_000.0;

    private final Differential differential = new Differential(40.0, 0.5, 0.3);

    @Test
    void rampsAddToThePreloadOnPowerAndOnTheOverrun() {
        assertThat(differential.lockNm(0.0)).isEqualTo(40.0);
        assertThat(differential.lockNm(200.0)).isEqualTo(140.0);
        assertThat(differential.lockNm(-200.0)).isEqualTo(100.0);
    }

    @Test
    void aSmallSlipDifferenceIsTakenAwayWhole() {
        double slip = 1.0e-5;
        // the smooth form is off by a third of the square of what it uses, here (0.3 N of 233 N)^2
        assertThat(differential.handedN(slip, STIFFNESS_N, 200.0, RADIUS_M))
                .isCloseTo(0.5 * STIFFNESS_N * slip, within(1.0e-6));
    }

    @Test
    void aLargeSlipDifferenceMeetsTheLock() {
        double most = 0.5 * 140.0 / RADIUS_M;
        assertThat(differential.handedN(0.1, STIFFNESS_N, 200.0, RADIUS_M)).isCloseTo(most, within(1.0e-6 * most));
    }

    @Test
    void forceLeavesTheFasterWheelWhicheverItIs() {
        double force = differential.handedN(0.004, STIFFNESS_N, 200.0, RADIUS_M);
        assertThat(force).isPositive();
        assertThat(differential.handedN(-0.004, STIFFNESS_N, 200.0, RADIUS_M)).isEqualTo(-force);
    }

    @Test
    void handsAsTheHyperbolicTangentSays() {
        double most = 0.5 * 140.0 / RADIUS_M;
        for (double slip = -0.02; slip < 0.02; slip += 0.0007) {
            assertThat(differential.handedN(slip, STIFFNESS_N, 200.0, RADIUS_M))
                    .isCloseTo(most * Math.tanh(0.5 * STIFFNESS_N * slip / most), within(1.0e-12 * most));
        }
    }

    @Test
    void anOpenDifferentialHandsNothing() {
        assertThat(new Differential(0.0, 0.0, 0.0).handedN(0.1, STIFFNESS_N, 500.0, RADIUS_M))
                .isZero();
    }
}
