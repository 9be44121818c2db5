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
        double[] a = centred(first);
        double[] b = centred(second);
        int most = Math.min((int) Math.round(greatestS / stepS), Math.max(0, first.length - FEWEST_SAMPLES));
        double[] correlations = new double[2 * most + 1];
        int best = most;
        for (int shift = -most; shift <= most; shift++) {
            double value = correlation(a, b, shift);
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
        return correlation(centred(first), centred(second), 0);
    }

    /** Of signals that are centred, so that one pass is as good as two. */
    private static double correlation(double[] first, double[] second, int shift) {
        int from = Math.max(0, -shift);
        int to = Math.min(first.length, second.length - shift);
        int count = 0;
        double sumA = 0.0;
        double sumB = 0.0;
        double aa = 0.0;
        double bb = 0.0;
        double ab = 0.0;
        for (int i = from; i < to; i++) {
            double a = first[i];
            double b = second[i + shift];
            double product = a * b;
            if (!Double.isNaN(product)) {
                sumA += a;
                sumB += b;
                aa += a * a;
                bb += b * b;
                ab += product;
                count++;
            }
        }
        if (count < FEWEST_SAMPLES) {
            return 0.0;
        }
        double varianceA = aa - sumA * sumA / count;
        double varianceB = bb - sumB * sumB / count;
        boolean constant = !(varianceA > ROUNDING * aa && varianceB > ROUNDING * bb);
        return constant ? 0.0 : (ab - sumA * sumB / count) / Math.sqrt(varianceA * varianceB);
    }

    /** Returns a copy about its mean, NaN where it is not finite. */
    private static double[] centred(double[] signal) {
        double sum = 0.0;
        int count = 0;
        for (double value : signal) {
            if (Double.isFinite(value)) {
                sum += value;
                count++;
            }
        }
        double[] centred = new double[signal.length];
        for (int i = 0; i < signal.length; i++) {
            centred[i] = Double.isFinite(signal[i]) ? signal[i] - sum / count : Double.NaN;
        }
        return centred;
    }
}
