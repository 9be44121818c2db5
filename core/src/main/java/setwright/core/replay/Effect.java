package setwright.core.replay;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A predicted change of one figure, with what the uncertainty of the car leaves open.
 *
 * @param central              middle of the draws
 * @param low                  a tenth of the draws lie below
 * @param high                 a tenth of the draws lie above
 * @param probabilityPositive  share of the draws above zero, 0..1
 */
public record Effect(double central, double low, double high, double probabilityPositive) {
    /** Standard deviations of a normal distribution within which four fifths of it lie, from end to end. */
    private static final double FOUR_FIFTHS = 2.563;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    /**
     * Returns an effect that is believed to be normal.
     *
     * @param deviation  standard deviation, &gt; 0
     */
    public static Effect normal(double mean, double deviation) {
        double reach = 0.5 * FOUR_FIFTHS * deviation;
        return new Effect(mean, mean - reach, mean + reach, NORMAL.cumulativeProbability(mean / deviation));
    }

    /** Returns the standard deviation that a normal distribution with this interval has. */
    public double deviation() {
        return (high - low) / FOUR_FIFTHS;
    }

    /** Returns how sure the sign is, 0.5..1. */
    public double probabilityOfSign() {
        return Math.max(probabilityPositive, 1.0 - probabilityPositive);
    }

    /** Tells whether at least nine tenths of the draws agree on the sign. */
    public boolean signSure() {
        return probabilityOfSign() >= 0.9;
    }

    /** Returns this effect in another unit. */
    public Effect times(double factor) {
        return factor >= 0.0
                ? new Effect(factor * central, factor * low, factor * high, probabilityPositive)
                : new Effect(factor * central, factor * high, factor * low, 1.0 - probabilityPositive);
    }
}
