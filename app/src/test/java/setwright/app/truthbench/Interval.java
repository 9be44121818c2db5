package setwright.app.truthbench;

import java.util.Locale;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;
import setwright.app.scoreboard.Count;

/**
 * What a share may be in truth, at 95 %: the interval of C. J. Clopper and E. S. Pearson, Biometrika 26, 1934, which covers at
 * least that often.
 *
 * @param low   0..1
 * @param high  0..1
 */
record Interval(double low, double high) {
    private static final double LEVEL = 0.95;

    static Interval of(Count count) {
        if (count.of() == 0) {
            return new Interval(0.0, 1.0);
        }
        ConfidenceInterval exact = BinomialProportion.getClopperPearsonInterval(count.of(), count.share(), LEVEL);
        return new Interval(exact.getLowerBound(), exact.getUpperBound());
    }

    /** Returns the interval in percent, such as {@code 81 to 94}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.0f to %.0f", 100.0 * low, 100.0 * high);
    }
}
