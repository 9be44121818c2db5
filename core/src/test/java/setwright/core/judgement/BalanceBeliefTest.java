package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.core.judgement.BalanceBelief.Estimate;

final class BalanceBeliefTest {
    private static final double ROUND_OFF = 1.0e-12;

    /** The product of two normal densities: weights are the inverse variances. */
    @Test
    void witnessesThatAgreeAddUp() {
        Estimate after = new Estimate(-1.0, 2.0).after(-4.0, 1.0);
        assertThat(after.meanRad()).isCloseTo((-1.0 / 4.0 - 4.0) / (1.0 / 4.0 + 1.0), within(ROUND_OFF));
        assertThat(after.deviationRad()).isCloseTo(1.0 / Math.sqrt(1.0 / 4.0 + 1.0), within(ROUND_OFF));
    }

    /** Apart by five, with a doubt of sqrt(3² + 4²) = 5 no more than chance; by ten, twice that: Birge's ratio is 2. */
    @Test
    void witnessesThatContradictEachOtherLeaveMoreDoubt() {
        double usual = 3.0 * 4.0 / 5.0;
        assertThat(new Estimate(2.0, 3.0).after(-3.0, 4.0).deviationRad()).isCloseTo(usual, within(ROUND_OFF));
        assertThat(new Estimate(2.0, 3.0).after(-8.0, 4.0).deviationRad()).isCloseTo(2.0 * usual, within(ROUND_OFF));
    }
}
