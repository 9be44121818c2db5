package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.handling.Phase;
import setwright.core.replay.DrivenLap;
import setwright.core.replay.GripWorth;
import setwright.core.standing.TimeCost;

final class TimePriceTest {
    private static final double UNIT_S = 0.3;

    @ParameterizedTest
    @EnumSource(BalanceSign.class)
    void theIntervalHoldsTheEstimate(BalanceSign sign) {
        Random random = new Random(7L);
        for (int i = 0; i < 1000; i++) {
            TimeCost car = new TimeCost(random.nextGaussian(), Math.abs(random.nextGaussian()));
            Finding.Price price =
                    TimePrice.of(car, random.nextDouble(), sign, Math.toRadians(3.0) * random.nextDouble());
            assertThat(price.low()).isLessThanOrEqualTo(price.seconds());
            assertThat(price.high()).isGreaterThanOrEqualTo(price.seconds());
            assertThat(price.seconds()).isNotNegative();
        }
    }

    @ParameterizedTest
    @EnumSource(BalanceSign.class)
    void noProblemCostsNothing(BalanceSign sign) {
        assertThat(TimePrice.of(new TimeCost(0.5, 0.3), UNIT_S, sign, 0.0)).isEqualTo(new Finding.Price(0.0, 0.0, 0.0));
        assertThat(Yardstick.gripShare(0.0)).isZero();
    }

    @Test
    void twoWitnessesAreAveragedByPrecision() {
        TimeCost both = TimePrice.both(new TimeCost(0.2, 0.1), new TimeCost(0.8, 0.2));
        assertThat(both.meanS()).isCloseTo(0.32, within(1.0e-12));
        assertThat(both.deviationS()).isCloseTo(0.1 / Math.sqrt(1.25), within(1.0e-12));
    }

    /** Grip is worth more the more of it there is, the more corners have it, and on the way out most, where a straight follows. */
    @Test
    void thePriceOfABalanceGrowsWithItsSize() {
        CarSheet sheet = Drive.sheet();
        Stint stint = new Drive(3L).laps(3).stint();
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        GripWorth worth = GripWorth.of(stint, DrivenLap.of(stint, trace, CornerPasses.of(stint, trace, sheet)), sheet);
        Set<Integer> all = Set.of(1, 2, 3, 4, 5, 6, 7, 8);
        double before = 0.0;
        for (double deg = 0.0; deg <= 3.0; deg += 0.25) {
            double price = worth.perLapS(Phase.MID, all, Yardstick.gripShare(Math.toRadians(deg)));
            if (deg == 0.0) {
                assertThat(price).isZero();
            } else {
                assertThat(price).isGreaterThan(before);
            }
            before = price;
        }
        assertThat(worth.perLapS(Phase.MID, Set.of(1, 2), 0.02)).isLessThan(worth.perLapS(Phase.MID, all, 0.02));
        // one per cent more in the middle alone: half a per cent more speed there at least, and the way out comes on
        // top
        double onTop = worth.perLapS(Phase.MID, all, 0.01);
        double here = CornerPasses.of(stint, trace, sheet).stream()
                        .flatMap(pass -> pass.phase(Phase.MID).stream())
                        .mapToDouble(balance -> balance.timeS())
                        .sum()
                / stint.goodLaps().size();
        assertThat(onTop).isBetween(0.003 * here, 0.03 * here);
    }
}
