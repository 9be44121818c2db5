package setwright.core.trial;

import setwright.core.numerics.MixedFit.Contrast;

/**
 * A difference between runs as it was estimated.
 *
 * @param value     with the change less without; for drift, last less first
 * @param error     standard error
 * @param freedom   degrees of freedom of the error, after Satterthwaite
 * @param low       lower end of the 95 % interval
 * @param high      upper end
 * @param byChance  two-sided probability of such a difference by chance
 */
public record TrialEffect(double value, double error, double freedom, double low, double high, double byChance) {
    private static final double LEVEL = 0.95;

    static TrialEffect of(Contrast contrast) {
        double reach = contrast.reach(LEVEL);
        return new TrialEffect(
                contrast.value(),
                contrast.error(),
                contrast.freedom(),
                contrast.value() - reach,
                contrast.value() + reach,
                contrast.byChance());
    }

    /** Returns the same with another source of error, a standard deviation that is known. */
    TrialEffect lessSure(double deviation) {
        return of(new Contrast(value, Math.hypot(error, deviation), freedom));
    }

    /** Returns how far the interval of another level reaches either way. */
    double reach(double level) {
        return new Contrast(value, error, freedom).reach(level);
    }

    /** Tells whether it is larger than chance makes it, at a two-sided level. */
    boolean clear(double level) {
        return byChance < level;
    }

    /** Tells whether it lies between two bounds, by two one-sided tests of 5 % each (Schuirmann, 1987, value from memory). */
    boolean within(double margin) {
        double reach = reach(0.9);
        return value - reach > -margin && value + reach < margin;
    }

    /** Returns this effect in another unit or the other way round. */
    public TrialEffect times(double factor) {
        double one = factor * low;
        double other = factor * high;
        return new TrialEffect(
                factor * value,
                Math.abs(factor) * error,
                freedom,
                Math.min(one, other),
                Math.max(one, other),
                byChance);
    }
}
