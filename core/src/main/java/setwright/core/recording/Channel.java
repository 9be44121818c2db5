package setwright.core.recording;

import java.util.Arrays;

/** Samples of one quantity on a recording's time base, in SI units; NaN where the recording has a gap. Immutable. */
public final class Channel {
    private final double[] samples;

    private Channel(double[] samples) {
        this.samples = samples;
    }

    /** Returns a channel holding a copy of these samples. */
    public static Channel of(double[] samples) {
        return new Channel(samples.clone());
    }

    /** Returns a channel of samples that it owns from now on: nobody may change them any more. */
    public static Channel holding(double[] samples) {
        return new Channel(samples);
    }

    /** Returns the number of samples. */
    public int size() {
        return samples.length;
    }

    /** Returns sample {@code index}, counted from 0; NaN in a gap. */
    public double get(int index) {
        return samples[index];
    }

    /** Returns a copy of all samples. */
    public double[] toArray() {
        return samples.clone();
    }

    /** Returns a copy of the samples {@code from} (inclusive) to {@code to} (exclusive). */
    public double[] slice(int from, int to) {
        return Arrays.copyOfRange(samples, from, to);
    }
}
