package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.numerics.Robust;
import setwright.core.replay.Pool;

/** What repeats round an invented lap. */
final class RepeatedBalanceTest {
    private static final double SPEED = 30.0;
    private static final double ROUND_OFF = 1.0e-12;

    /** Each corner the same on all of its laps. */
    private static List<CornerPass> passes(int laps, double... corners) {
        List<CornerPass> passes = new ArrayList<>();
        for (int corner = 1; corner <= corners.length; corner++) {
            for (int lap = 1; lap <= laps; lap++) {
                passes.add(MidCorner.pass(lap, corner, SPEED, corners[corner - 1]));
            }
        }
        return passes;
    }

    private static RepeatedBalance of(List<CornerPass> passes) {
        return RepeatedBalance.of(passes, Pool.all(Phase.MID)).orElseThrow();
    }

    @Test
    void aSingleWildCornerMovesNothing() {
        RepeatedBalance calm = of(passes(5, 0.01, 0.02, 0.03, 0.04, 0.05));
        RepeatedBalance wild = of(passes(5, 0.01, 0.02, 0.03, 0.04, 1.0));
        assertThat(wild.rad()).isEqualTo(calm.rad()).isEqualTo(0.03, within(ROUND_OFF));
    }

    @Test
    void onlyCornersOfTheSpeedsThatAreAskedForCount() {
        List<CornerPass> passes = passes(5, 0.01, 0.01, 0.01);
        for (int lap = 1; lap <= 5; lap++) {
            passes.add(MidCorner.pass(lap, 9, 80.0, 0.08));
        }
        assertThat(RepeatedBalance.of(passes, Pool.of(Phase.MID, SpeedClass.HIGH))
                        .orElseThrow()
                        .rad())
                .isEqualTo(0.08, within(ROUND_OFF));
        assertThat(RepeatedBalance.of(passes, Pool.all(Phase.EXIT))).isEmpty();
    }

    @Test
    void twoLapsOfACornerHaveNoMiddle() {
        assertThat(RepeatedBalance.of(passes(2, 0.01, 0.02), Pool.all(Phase.MID)))
                .isEmpty();
    }

    /** Many laps drawn: medians of the corners scatter about the truth as widely as each says by itself. */
    @ParameterizedTest
    @ValueSource(ints = {5, 9, 15})
    void saysHowFarItMayBeOff(int corners) {
        Random random = new Random(corners);
        double scatter = Math.toRadians(0.15);
        double[] found = new double[400];
        double[] said = new double[found.length];
        for (int i = 0; i < found.length; i++) {
            double[] drawn = new double[corners];
            for (int k = 0; k < corners; k++) {
                drawn[k] = scatter * random.nextGaussian();
            }
            RepeatedBalance repeated = of(passes(3, drawn));
            found[i] = repeated.rad();
            said[i] = repeated.errorRad();
        }
        assertThat(Robust.median(said)).isEqualTo(Robust.scaledMad(found), within(0.2 * Robust.scaledMad(found)));
    }

    /** What a corner costs is the mean of its laps; that one of them was wild is said by the doubt. */
    @Test
    void aWildLapCountsAndIsInTheDoubt() {
        List<CornerPass> passes = passes(4, 0.01, 0.01, 0.01);
        double calm = of(passes).errorRad();
        for (int corner = 1; corner <= 3; corner++) {
            passes.add(MidCorner.pass(5, corner, SPEED, 0.06));
        }
        assertThat(of(passes).rad()).isEqualTo(0.02, within(ROUND_OFF));
        assertThat(of(passes).errorRad()).isGreaterThan(2.0 * calm);
    }

    @Test
    void cornersThatLieFartherApartTellLess() {
        double calm = of(passes(3, 0.010, 0.011, 0.012, 0.013, 0.014)).errorRad();
        double apart = of(passes(3, -0.05, -0.02, 0.012, 0.03, 0.06)).errorRad();
        assertThat(apart).isGreaterThan(2.0 * calm);
        assertThat(calm).isPositive();
    }
}
