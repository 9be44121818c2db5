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
        CentredSignal a = new CentredSignal(first);
        CentredSignal b = new CentredSignal(second);
        double[] later = a.productsWith(b, most);
        double[] earlier = b.productsWith(a, most);
        double[] correlations = new double[2 * most + 1];
        for (int shift = -most; shift <= most; shift++) {
            correlations[most + shift] = correlation(a, b, shift, shift < 0 ? earlier[-shift] : later[shift]);
        }
        return correlations;
    }

    /** Returns the correlation coefficient of the samples that both signals have; 0 when that says nothing. */
    public static double correlation(double[] first, double[] second) {
        CentredSignal a = new CentredSignal(first);
        CentredSignal b = new CentredSignal(second);
        return correlation(a, b, 0, a.productsWith(b, 0)[0]);
    }

    /** Of signals that are centred, so that one pass is as good as two. */
    private static double correlation(CentredSignal first, CentredSignal second, int shift, double products) {
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
        return constant ? 0.0 : (products - a[1] * b[1] / count) / Math.sqrt(varianceA * varianceB);
    }
}
