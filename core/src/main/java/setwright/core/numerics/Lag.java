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
        double[] correlations = new double[2 * most + 1];
        int best = most;
        for (int shift = -most; shift <= most; shift++) {
            double value = correlation(first, second, shift);
            correlations[most + shift] = value;
            if (Math.abs(value) > Math.abs(correlations[best])) {
                best = most + shift;
            }
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

    /** Returns the correlation coefficient of the samples that both signals have; 0 when that says nothing. */
    public static double correlation(double[] first, double[] second) {
        return correlation(first, second, 0);
    }

    private static double correlation(double[] first, double[] second, int shift) {
        int from = Math.max(0, -shift);
        int to = Math.min(first.length, second.length - shift);
        int count = 0;
        double sumA = 0.0;
        double sumB = 0.0;
        for (int i = from; i < to; i++) {
            double a = first[i];
            double b = second[i + shift];
            if (Double.isFinite(a) && Double.isFinite(b)) {
                sumA += a;
                sumB += b;
                count++;
            }
        }
        if (count < FEWEST_SAMPLES) {
            return 0.0;
        }
        double meanA = sumA / count;
        double meanB = sumB / count;
        double aa = 0.0;
        double bb = 0.0;
        double ab = 0.0;
        for (int i = from; i < to; i++) {
            double a = first[i] - meanA;
            double b = second[i + shift] - meanB;
            if (Double.isFinite(a) && Double.isFinite(b)) {
                aa += a * a;
                bb += b * b;
                ab += a * b;
            }
        }
        return aa > 0.0 && bb > 0.0 ? ab / Math.sqrt(aa * bb) : 0.0;
    }
}
