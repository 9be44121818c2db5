package setwright.core.circuit;

import java.util.Arrays;

/**
 * Medians of many series place by place, with each series left out in turn.
 *
 * <p>The values of a place are sorted once; the median without one of them lies next to the middle. So all of them take one pass, where
 * taking each anew grows with the square of the number of series.
 */
final class MediansWithoutOne {
    private final double[][] series;
    private final double[][] sorted;

    /**
     * Sorts.
     *
     * @param series  equally long; what is not finite is left out
     */
    MediansWithoutOne(double[][] series) {
        this.series = series;
        this.sorted = new double[series[0].length][];
        double[] here = new double[series.length];
        for (int i = 0; i < sorted.length; i++) {
            int count = 0;
            for (double[] one : series) {
                if (Double.isFinite(one[i])) {
                    here[count++] = one[i];
                }
            }
            sorted[i] = Arrays.copyOf(here, count);
            Arrays.sort(sorted[i]);
        }
    }

    /** Returns the medians of all series but one; NaN in a place where no other has a value. */
    double[] without(int left) {
        double[] medians = new double[sorted.length];
        for (int i = 0; i < medians.length; i++) {
            double gone = series[left][i];
            double[] here = sorted[i];
            medians[i] = Double.isFinite(gone)
                    ? median(here, Arrays.binarySearch(here, gone), here.length - 1)
                    : median(here, here.length, here.length);
        }
        return medians;
    }

    /** The median of so many values as are left when the one at {@code gone} is taken out. */
    private static double median(double[] here, int gone, int count) {
        if (count == 0) {
            return Double.NaN;
        }
        double low = at(here, gone, (count - 1) / 2);
        double high = at(here, gone, count / 2);
        return low + 0.5 * (high - low);
    }

    private static double at(double[] here, int gone, int rank) {
        return here[rank < gone ? rank : rank + 1];
    }
}
