package setwright.core.numerics;

/**
 * Butterworth low-pass run forward and backward over each stretch between gaps, so that nothing is delayed.
 *
 * <p>One pass has {@code |H|^2 = 1 / (1 + (tan(pi f / fs) / tan(pi fc / fs))^(2n))}; both passes together have {@code |H|^2}
 * as their gain, which is one half (-6 dB) at the cut-off.
 *
 * <p><b>Source:</b> bilinear transform with pre-warping, second-order sections with {@code Q = 1 / (2 cos theta_k)}: A. V.
 * Oppenheim and R. W. Schafer, <i>Discrete-Time Signal Processing</i>, chapter 7 (value from memory). Edges are continued by
 * reflection through the end point (odd extension), which keeps level and slope (common practice).
 */
public final class ZeroPhaseLowPass {
    /** Pole quality factors {@code 1 / (2 cos theta)} of the sections, poles evenly spread on the Butterworth circle. */
    private static final double[] QUALITY_2 = {1.0 / Math.sqrt(2.0)};

    private static final double[] QUALITY_4 = {
        1.0 / (2.0 * Math.cos(Math.PI / 8.0)), 1.0 / (2.0 * Math.cos(3.0 * Math.PI / 8.0))
    };

    private final Section[] sections;
    private final int padding;

    private ZeroPhaseLowPass(Section[] sections, int padding) {
        this.sections = sections;
        this.padding = padding;
    }

    /**
     * Designs a filter.
     *
     * @param order         of one pass, 2 or 4
     * @param cutoffHz      where one pass has -3 dB, in (0, sampleRateHz / 2)
     * @param sampleRateHz  samples per second, &gt; 0
     * @throws IllegalArgumentException when a value is outside its range
     */
    public static ZeroPhaseLowPass butterworth(int order, double cutoffHz, double sampleRateHz) {
        if (order != 2 && order != 4) {
            throw new IllegalArgumentException("filter order must be 2 or 4, got " + order);
        }
        if (!(cutoffHz > 0.0 && cutoffHz < 0.5 * sampleRateHz && sampleRateHz < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cut-off must lie between 0 and half the sample rate (" + sampleRateHz
                    + " Hz), got " + cutoffHz + " Hz");
        }
        double k = Math.tan(Math.PI * cutoffHz / sampleRateHz);
        double[] quality = order == 2 ? QUALITY_2 : QUALITY_4;
        Section[] sections = new Section[quality.length];
        for (int i = 0; i < quality.length; i++) {
            sections[i] = Section.lowPass(k, quality[i]);
        }
        // After two cut-off periods a Butterworth transient has died down to below a thousandth.
        int padding = (int) Math.ceil(2.0 * sampleRateHz / cutoffHz);
        return new ZeroPhaseLowPass(sections, padding);
    }

    /**
     * Filters a signal.
     *
     * @param samples  NaN in gaps; not changed
     * @return filtered samples; NaN where the input was NaN
     */
    public double[] apply(double[] samples) {
        double[] out = new double[samples.length];
        int i = 0;
        while (i < samples.length) {
            if (Double.isNaN(samples[i])) {
                out[i++] = Double.NaN;
                continue;
            }
            int from = i;
            while (i < samples.length && !Double.isNaN(samples[i])) {
                i++;
            }
            filterRun(samples, from, i, out);
        }
        return out;
    }

    private void filterRun(double[] samples, int from, int to, double[] out) {
        int length = to - from;
        int pad = Math.min(padding, length - 1);
        double[] work = new double[length + 2 * pad];
        for (int i = 0; i < pad; i++) {
            work[i] = 2.0 * samples[from] - samples[from + pad - i];
            work[pad + length + i] = 2.0 * samples[to - 1] - samples[to - 2 - i];
        }
        System.arraycopy(samples, from, work, pad, length);
        for (Section section : sections) {
            section.forward(work);
        }
        for (Section section : sections) {
            section.backward(work);
        }
        System.arraycopy(work, pad, out, from, length);
    }

    /** One second-order section with unit gain at zero frequency, transposed direct form II. */
    private record Section(double b0, double b1, double b2, double a1, double a2) {
        static Section lowPass(double k, double quality) {
            double norm = 1.0 / (1.0 + k / quality + k * k);
            double b0 = k * k * norm;
            return new Section(b0, 2.0 * b0, b0, 2.0 * (k * k - 1.0) * norm, (1.0 - k / quality + k * k) * norm);
        }

        /** Filters in place, starting from rest at the first sample's level. */
        void forward(double[] values) {
            run(values, 0, 1);
        }

        /** The same from the last sample to the first. */
        void backward(double[] values) {
            run(values, values.length - 1, -1);
        }

        private void run(double[] values, int first, int step) {
            double c0 = b0;
            double c1 = b1;
            double c2 = b2;
            double d1 = a1;
            double d2 = a2;
            double level = values[first];
            double z2 = (c2 - d2) * level;
            double z1 = (c1 - d1) * level + z2;
            for (int i = first, left = values.length; left > 0; i += step, left--) {
                double in = values[i];
                double y = c0 * in + z1;
                z1 = c1 * in - d1 * y + z2;
                z2 = c2 * in - d2 * y;
                values[i] = y;
            }
        }
    }
}
