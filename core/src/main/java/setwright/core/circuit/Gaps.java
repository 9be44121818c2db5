package setwright.core.circuit;

/** Samples with gaps, read as if they had none: for integrating, never for judging. */
final class Gaps {
    private Gaps() {}

    /** Returns the samples with NaN stretches bridged in a straight line, ends carried on; all zero when all are NaN. */
    static double[] bridged(double[] samples) {
        double[] whole = samples.clone();
        int before = -1;
        for (int i = 0; i <= whole.length; i++) {
            if (i < whole.length && Double.isNaN(samples[i])) {
                continue;
            }
            for (int k = before + 1; k < i; k++) {
                if (before < 0) {
                    whole[k] = i < whole.length ? samples[i] : 0.0;
                } else if (i == whole.length) {
                    whole[k] = samples[before];
                } else {
                    double share = (double) (k - before) / (i - before);
                    whole[k] = samples[before] * (1.0 - share) + samples[i] * share;
                }
            }
            before = i;
        }
        return whole;
    }

    /** Returns the value at a place between samples, linearly; the ends are carried on. */
    static double between(double[] samples, double place) {
        if (!(place > 0.0)) {
            return samples[0];
        }
        int index = (int) place;
        if (index >= samples.length - 1) {
            return samples[samples.length - 1];
        }
        double share = place - index;
        return samples[index] * (1.0 - share) + samples[index + 1] * share;
    }
}
