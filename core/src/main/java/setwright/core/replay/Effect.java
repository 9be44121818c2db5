package setwright.core.replay;

/**
 * A predicted change of one figure, with what the uncertainty of the car leaves open.
 *
 * @param central              middle of the draws
 * @param low                  a tenth of the draws lie below
 * @param high                 a tenth of the draws lie above
 * @param probabilityPositive  share of the draws above zero, 0..1
 */
public record Effect(double central, double low, double high, double probabilityPositive) {

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
