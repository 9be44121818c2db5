package setwright.app.truthbench;

import java.util.Locale;
import org.hipparchus.distribution.continuous.BetaDistribution;
import setwright.app.scoreboard.Count;

/**
 * What a share may be in truth, at 95 %: the interval of C. J. Clopper and E. S. Pearson, Biometrika 26, 1934, which covers at
 * least that often. Its ends are quantiles of beta distributions.
 *
 * @param low   0..1
 * @param high  0..1
 */
record Interval(double low, double high) {
    private static final double TAIL = 0.025;

    static Interval of(Count count) {
        int hit = count.hit();
        int missed = count.of() - hit;
        double low = hit == 0 ? 0.0 : new BetaDistribution(hit, missed + 1.0).inverseCumulativeProbability(TAIL);
        double high =
                missed == 0 ? 1.0 : new BetaDistribution(hit + 1.0, missed).inverseCumulativeProbability(1.0 - TAIL);
        return new Interval(low, high);
    }

    /** Returns the interval in percent, such as {@code 81 to 94}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.0f to %.0f", 100.0 * low, 100.0 * high);
    }
}
