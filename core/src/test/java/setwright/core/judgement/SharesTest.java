package setwright.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SharesTest {
    private static final double ROUND_OFF = 1.0e-12;

    @Test
    void twoCornersAreNeededAndCountedExactly() {
        assertThat(Shares.atLeastTwo(new double[] {1.0})).isCloseTo(0.0, within(ROUND_OFF));
        assertThat(Shares.atLeastTwo(new double[] {1.0, 1.0})).isCloseTo(1.0, within(ROUND_OFF));
        // two fair coins of three: (3 + 1) / 8
        assertThat(Shares.atLeastTwo(new double[] {0.5, 0.5, 0.5})).isCloseTo(0.5, within(ROUND_OFF));
    }

    @Test
    void twelveLapsOutshoutTwo() {
        double twoOfTwo = Shares.mostly(new Shares.Count(1, 2, 2), 0.2);
        double elevenOfTwelve = Shares.mostly(new Shares.Count(2, 11, 12), 0.2);

        assertThat(elevenOfTwelve).isGreaterThan(0.99);
        assertThat(twoOfTwo).isLessThan(0.9);
    }

    @Test
    void moreSightingsNeverMakeItLessProbable() {
        double last = 0.0;
        for (int seen = 0; seen <= 8; seen++) {
            double now = Shares.mostly(new Shares.Count(1, seen, 8), 0.3);
            assertThat(now).isGreaterThan(last);
            last = now;
        }
    }

    @Test
    void theCommonShareStaysOffTheEnds() {
        assertThat(Shares.pooled(List.of(new Shares.Count(1, 0, 8)))).isGreaterThan(0.0);
        assertThat(Shares.pooled(List.of(new Shares.Count(1, 8, 8)))).isLessThan(1.0);
    }
}
