package setwright.core.numerics;

/**
 * How much later one signal comes than another, by the peak of their normalised cross-correlation.
 *
 * @param seconds            lag of the second signal behind the first, s; negative when it comes earlier
 * @param correlation        at the peak, -1..1; its sign tells whether one signal is turned over
 * @param correlationAtZero  without any shift
 * @param atLimit            the peak lies at the greatest lag tried, so the true one may be greater
 */
public record Lag(double seconds, double correlation, double correlationAtZero, boolean atLimit) {

    /** Fewer common samples than this say nothing. */
    private static final int FEWEST_SAMPLES = 20;
    /** Sums of squares of millions of samples are good to about this share: below it a signal is constant. */
    private static final double ROUNDING = 1.0e-12;

    /**
     * Measures the lag of {@code second} behind {@code first}. The peak between samples is found with a parabola through the
     * three highest values (common practice; good to a tenth of a step for signals well below half the sample rate).
     *
     * @param first      NaN in gaps
     * @param second     as long as {@code first}; NaN in gaps
     * @param stepS      time between samples, s
     * @param greatestS  greatest lag to try on either side, s
     * @return correlation 0 when there are too few common samples or a signal is constant
     */
    public static Lag between(double[] first, double[] second, double stepS, double greatestS) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(
                    "signals must be equally long, got " + first.length + " and " + second.length);
        }
        int most = Math.min((int) Math.round(greatestS / stepS), Math.max(0, first.length - FEWEST_SAMPLES));
        double[] correlations = profile(first, second, most);
        int best = most;
        for (int i = 0; i < correlations.length; i++) {
            best = Math.abs(correlations[i]) > Math.abs(correlations[best]) ? i : best;
        }
        double offset = 0.0;
        double peak = correlations[best];
        boolean inside = best > 0 && best < correlations.length - 1;
        if (inside) {
            double before = correlations[best - 1];
            double after = correlations[best + 1];
            double bend = before - 2.0 * peak + after;
            if (Math.abs(bend) > 1.0e-15) {
                offset = Math.max(-0.5, Math.min(0.5, 0.5 * (before - after) / bend));
                peak = Math.max(-1.0, Math.min(1.0, peak - 0.25 * (before - after) * offset));
            }
        }
        return new Lag((best - most + offset) * stepS, peak, correlations[most], most > 0 && !inside);
    }

    /**
     * Returns the correlation coefficient at every shift of the second signal from {@code -most} to {@code most} samples; 0 where the
     * common samples say nothing.
     */
    public static double[] profile(double[] first, double[] second, int most) {
        Centred a = new Centred(first);
        Centred b = new Centred(second);
        double[] correlations = new double[2 * most + 1];
        for (int shift = -most; shift <= most; shift++) {
            correlations[most + shift] = correlation(a, b, shift);
        }
        return correlations;
    }

    /** Returns the correlation coefficient of the samples that both signals have; 0 when that says nothing. */
    public static double correlation(double[] first, double[] second) {
        return correlation(new Centred(first), new Centred(second), 0);
    }

    /**
     * Of signals that are centred, so that one pass is as good as two. Only the sum of products runs over all samples; the other sums
     * are those of each signal alone, less what lies where the other has a gap.
     */
    private static double correlation(Centred first, Centred second, int shift) {
        int from = Math.max(0, -shift);
        int to = Math.min(first.size(), second.size() - shift);
        if (to <= from) {
            return 0.0;
        }
        double[] a = first.sums(from, to, second, shift);
        double[] b = second.sums(from + shift, to + shift, first, -shift);
        double count = a[0];
        if (count < FEWEST_SAMPLES) {
            return 0.0;
        }
        double varianceA = a[2] - a[1] * a[1] / count;
        double varianceB = b[2] - b[1] * b[1] / count;
        boolean constant = !(varianceA > ROUNDING * a[2] && varianceB > ROUNDING * b[2]);
        double products = first.product(from, to, second, shift);
        return constant ? 0.0 : (products - a[1] * b[1] / count) / Math.sqrt(varianceA * varianceB);
    }

    /** A signal about its mean, zero where it is not finite. */
    private static final class Centred {
        private final double[] values;
        private final boolean[] known;
        private final int[] missing;
        /** Up to each sample: how many are known, their sum and the sum of their squares. */
        private final double[][] upTo;

        Centred(double[] signal) {
            int size = signal.length;
            known = new boolean[size];
            double sum = 0.0;
            int count = 0;
            for (int i = 0; i < size; i++) {
                known[i] = Double.isFinite(signal[i]);
                sum += known[i] ? signal[i] : 0.0;
                count += known[i] ? 1 : 0;
            }
            values = new double[size];
            missing = new int[size - count];
            upTo = new double[3][size + 1];
            int gaps = 0;
            for (int i = 0; i < size; i++) {
                if (known[i]) {
                    values[i] = signal[i] - sum / count;
                } else {
                    missing[gaps++] = i;
                }
                upTo[0][i + 1] = upTo[0][i] + (known[i] ? 1.0 : 0.0);
                upTo[1][i + 1] = upTo[1][i] + values[i];
                upTo[2][i + 1] = upTo[2][i] + values[i] * values[i];
            }
        }

        int size() {
            return values.length;
        }

        /** Count, sum and sum of squares of a stretch where the other, so many samples later, is known too. */
        double[] sums(int from, int to, Centred other, int shift) {
            double[] sums = new double[3];
            for (int k = 0; k < 3; k++) {
                sums[k] = upTo[k][to] - upTo[k][from];
            }
            for (int gap : other.missing) {
                int i = gap - shift;
                if (i >= from && i < to && known[i]) {
                    sums[0] -= 1.0;
                    sums[1] -= values[i];
                    sums[2] -= values[i] * values[i];
                }
            }
            return sums;
        }

        /** Sum of products with the other; four sums side by side do not wait for each other. */
        double product(int from, int to, Centred other, int shift) {
            double[] mine = values;
            double[] his = other.values;
            double one = 0.0;
            double two = 0.0;
            double three = 0.0;
            double four = 0.0;
            int i = from;
            for (; i + 3 < to; i += 4) {
                one += mine[i] * his[i + shift];
                two += mine[i + 1] * his[i + 1 + shift];
                three += mine[i + 2] * his[i + 2 + shift];
                four += mine[i + 3] * his[i + 3 + shift];
            }
            for (; i < to; i++) {
                one += mine[i] * his[i + shift];
            }
            return one + two + (three + four);
        }
    }
}
