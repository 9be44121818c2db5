package setwright.core.numerics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Keeps the expected share of false findings among those named below a level, however many are looked for.
 *
 * <p><b>Valid for</b> tests that are independent or positively dependent.
 *
 * <p><b>Source:</b> Y. Benjamini and Y. Hochberg, Journal of the Royal Statistical Society B 57 (1995) 289-300.
 */
public final class FalseDiscovery {
    private FalseDiscovery() {}

    /**
     * Returns for each test the least level at which it would be named.
     *
     * @param pValues  0..1 each
     */
    public static double[] adjusted(double[] pValues) {
        int m = pValues.length;
        int[] order = IntStream.range(0, m)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> pValues[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[m];
        Arrays.fill(adjusted, 1.0);
        double least = 1.0;
        for (int rank = m; rank >= 1; rank--) {
            least = Math.min(least, m * pValues[order[rank - 1]] / rank);
            adjusted[order[rank - 1]] = least;
        }
        return adjusted;
    }
}
