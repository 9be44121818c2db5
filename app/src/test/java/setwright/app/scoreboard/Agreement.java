package setwright.app.scoreboard;

import java.util.List;
import java.util.Locale;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/**
 * How well figures follow the true ones.
 *
 * @param count        number of pairs
 * @param correlation  Pearson's, -1..1; NaN when the truth (or the answer) is the same everywhere
 * @param offset       mean of answer minus truth
 * @param rms          root mean square of answer minus truth
 */
public record Agreement(int count, double correlation, double offset, double rms) {

    /**
     * A figure beside the true one.
     *
     * @param truth   as it is
     * @param answer  as found
     */
    public record Pair(double truth, double answer) {}

    public static Agreement of(List<Pair> pairs) {
        double offset = pairs.stream()
                .mapToDouble(pair -> pair.answer() - pair.truth())
                .average()
                .orElse(Double.NaN);
        double square = pairs.stream()
                .mapToDouble(pair -> Math.pow(pair.answer() - pair.truth(), 2.0))
                .average()
                .orElse(Double.NaN);
        return new Agreement(pairs.size(), correlation(pairs), offset, Math.sqrt(square));
    }

    private static double correlation(List<Pair> pairs) {
        if (pairs.size() < 3) {
            return Double.NaN;
        }
        return new PearsonsCorrelation()
                .correlation(
                        pairs.stream().mapToDouble(Pair::truth).toArray(),
                        pairs.stream().mapToDouble(Pair::answer).toArray());
    }

    /** Returns number of pairs, correlation, offset and spread as cells of a table. */
    List<String> cells() {
        return List.of(Integer.toString(count), figure(correlation), figure(offset), figure(rms));
    }

    static String figure(double value) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%.2f", Math.round(100.0 * value) / 100.0);
    }
}
