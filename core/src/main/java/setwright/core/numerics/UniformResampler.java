package setwright.core.numerics;

import java.util.Arrays;

/**
 * Brings samples taken at uneven times onto a uniform time base.
 *
 * <p>Missing rows, jitter and a changing rate are all the same to it: samples are joined by straight lines on a fine base (as
 * fine as the densest part of the input), low-passed where the result is coarser than that, and read off. Nothing is invented
 * across more than the longest gap allowed: there the result is NaN.
 *
 * <p>Anti-alias filter: fourth-order Butterworth forward and backward at 0.4 of the new rate, down by 16 dB at the new Nyquist
 * frequency and by more than 50 dB at the new rate.
 */
public final class UniformResampler {
    private static final double ANTI_ALIAS_SHARE = 0.4;
    /** Rounding of printed times must not open a gap. */
    private static final double GAP_TOLERANCE = 1.02;
    /** Times printed with few digits may miss the base by a rounding; a hundredth of a step is no extrapolation. */
    private static final double SLACK = 0.01;

    private final double[] times;
    private final double rateHz;
    private final int count;
    private final double longestGapS;
    /** Samples are joined on a base this many times as fine, then low-passed; 1 where that is not needed. */
    private final int ratio;
    /** Whether the input lies on the fine base already, as most loggers write it. */
    private final boolean onFineBase;

    private UniformResampler(double[] times, double rateHz, double longestGapS) {
        this.times = times;
        this.rateHz = rateHz;
        this.longestGapS = longestGapS * GAP_TOLERANCE;
        this.count = (int) Math.floor((times[times.length - 1] - times[0]) * rateHz + 1.0e-6) + 1;
        double densest = Math.max(rateHz, densestRate(times));
        // A tenth more than the new rate folds nothing that the anti-alias filter would remove.
        this.ratio = densest < 1.1 * rateHz ? 1 : (int) Math.ceil(densest / rateHz - 1.0e-3);
        this.onFineBase = isOnFineBase();
    }

    private boolean isOnFineBase() {
        int fine = fineCount();
        double rate = ratio * rateHz;
        boolean on = fine <= times.length;
        for (int i = 0; on && i < fine; i++) {
            on = Math.abs(timeOf(i, rate) - times[i]) <= SLACK / rate;
        }
        return on;
    }

    private int fineCount() {
        return (count - 1) * ratio + 1;
    }

    /**
     * Makes a resampler for one time base; sample {@code i} of the result is taken at {@code times[0] + i / rateHz}.
     *
     * @param times        s, at least two, never falling
     * @param rateHz       of the result, &gt; 0
     * @param longestGapS  longest time between two samples that is bridged, s
     * @throws IllegalArgumentException when times fall or are not finite
     */
    public static UniformResampler onto(double[] times, double rateHz, double longestGapS) {
        if (times.length < 2 || !(rateHz > 0.0)) {
            throw new IllegalArgumentException(
                    "need two times and a rate > 0 Hz, got " + times.length + " and " + rateHz);
        }
        for (int i = 0; i < times.length; i++) {
            if (!Double.isFinite(times[i]) || (i > 0 && times[i] < times[i - 1])) {
                throw new IllegalArgumentException("times must be finite and never fall: " + times[i] + " at " + i);
            }
        }
        return new UniformResampler(times.clone(), rateHz, longestGapS);
    }

    /** The rate of the densest tenth of the input, Hz: what the input can hold must not fold down. */
    private static double densestRate(double[] times) {
        double[] steps = new double[times.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = times[i + 1] > times[i] ? times[i + 1] - times[i] : Double.NaN;
        }
        double step = Robust.quantile(steps, 0.1);
        return step > 0.0 ? 1.0 / step : 0.0;
    }

    /** Returns the number of samples of a result. */
    public int count() {
        return count;
    }

    /**
     * Resamples a quantity that varies smoothly.
     *
     * @param values  one per time; NaN where missing
     */
    public double[] resample(double[] values) {
        double[] fine = interpolate(values);
        if (ratio == 1) {
            return fine;
        }
        double[] dense = ZeroPhaseLowPass.butterworth(4, ANTI_ALIAS_SHARE * rateHz, ratio * rateHz)
                .apply(fine);
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            out[i] = dense[i * ratio];
        }
        return out;
    }

    /**
     * Resamples roughly, at a fraction of the price of {@link #resample}: means over the time of one sample, for what is to be smoothed
     * much further anyway. A mean leaves nothing of what would come back as standing still; next to it, a nineteenth of what would come
     * back within a twentieth of the new rate.
     *
     * @param values  one per time; NaN where missing
     */
    public double[] means(double[] values) {
        double[] fine = interpolate(values);
        int reach = ratio / 2;
        if (reach == 0) {
            return fine;
        }
        // of an even number of intervals the two at the ends count half
        double end = ratio % 2 == 0 ? 0.5 : 1.0;
        double all = 2.0 * (reach - 1.0 + end) + 1.0;
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            int middle = i * ratio;
            double sum = Double.NaN;
            if (middle >= reach && middle + reach < fine.length) {
                sum = end * (fine[middle - reach] + fine[middle + reach]);
                for (int at = middle - reach + 1; at < middle + reach; at++) {
                    sum += fine[at];
                }
            }
            // a gap makes the sum one, so that only windows with one are looked at sample by sample
            out[i] = Double.isNaN(sum) ? meanOfKnown(fine, middle, reach, end) : sum / all;
        }
        return out;
    }

    private static double meanOfKnown(double[] fine, int middle, int reach, double end) {
        if (Double.isNaN(fine[middle])) {
            return Double.NaN;
        }
        double sum = 0.0;
        double weight = 0.0;
        for (int at = Math.max(0, middle - reach); at <= Math.min(fine.length - 1, middle + reach); at++) {
            if (!Double.isNaN(fine[at])) {
                double w = Math.abs(at - middle) == reach ? end : 1.0;
                sum += w * fine[at];
                weight += w;
            }
        }
        return weight > 0.0 ? sum / weight : Double.NaN;
    }

    /** Resamples a quantity that goes in steps, such as a gear: the last value at or before each time. */
    public double[] hold(double[] values) {
        double[] out = new double[count];
        Arrays.fill(out, Double.NaN);
        int last = -1;
        int next = 0;
        for (int i = 0; i < count; i++) {
            double time = timeOf(i, rateHz) + 1.0e-9;
            while (next < times.length && times[next] <= time + 0.5 * jitter()) {
                if (!Double.isNaN(values[next])) {
                    last = next;
                }
                next++;
            }
            if (last >= 0 && time - times[last] <= longestGapS) {
                out[i] = values[last];
            }
        }
        return out;
    }

    /** Resamples a short pulse: the value farthest from zero in the interval that belongs to each sample. */
    public double[] peak(double[] values) {
        double[] out = new double[count];
        Arrays.fill(out, Double.NaN);
        for (int j = 0; j < times.length; j++) {
            int i = (int) Math.round((times[j] - times[0]) * rateHz);
            if (i < count && !Double.isNaN(values[j]) && !(Math.abs(values[j]) <= Math.abs(out[i]))) {
                out[i] = values[j];
            }
        }
        double[] held = hold(values);
        for (int i = 0; i < count; i++) {
            out[i] = Double.isNaN(out[i]) ? held[i] : out[i];
        }
        return out;
    }

    private double jitter() {
        return 0.5 / rateHz;
    }

    private double timeOf(int index, double rate) {
        return times[0] + index / rate;
    }

    private double[] interpolate(double[] values) {
        if (values.length != times.length) {
            throw new IllegalArgumentException(values.length + " values for " + times.length + " times");
        }
        int samples = fineCount();
        double rate = ratio * rateHz;
        if (onFineBase && !hasGap(values, samples)) {
            return Arrays.copyOf(values, samples);
        }
        double[] out = new double[samples];
        Arrays.fill(out, Double.NaN);
        int before = nextKnown(values, 0);
        if (before < 0) {
            return out;
        }
        int after = nextKnown(values, before + 1);
        double slack = SLACK / rate;
        for (int i = 0; i < samples; i++) {
            double time = timeOf(i, rate);
            while (after >= 0 && times[after] <= time) {
                before = after;
                after = nextKnown(values, after + 1);
            }
            if (Math.abs(time - times[before]) <= slack) {
                out[i] = values[before];
            } else if (after >= 0 && Math.abs(time - times[after]) <= slack) {
                out[i] = values[after];
            } else if (after >= 0 && time > times[before] && times[after] - times[before] <= longestGapS) {
                double share = (time - times[before]) / (times[after] - times[before]);
                out[i] = values[before] + share * (values[after] - values[before]);
            }
        }
        return out;
    }

    private static boolean hasGap(double[] values, int to) {
        for (int i = 0; i < to; i++) {
            if (Double.isNaN(values[i])) {
                return true;
            }
        }
        return false;
    }

    private static int nextKnown(double[] values, int from) {
        for (int i = from; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                return i;
            }
        }
        return -1;
    }
}
