package setwright.core.car.tyre;

/**
 * Combined slip by the friction ellipse: the longitudinal force is the pure one, and the lateral force keeps the share
 * {@code sqrt(1 - (F_x / F_x,peak)^2)} of its own.
 *
 * <p>Good where the longitudinal force is what is known, as from a recorded acceleration. Beyond the longitudinal peak the
 * tyre is taken to have no lateral force left: read off the falling side, the ellipse would give grip back to a wheel that
 * locks. Use {@link SimilarityMethod} there. Source: textbook method, from memory.
 *
 * @param tyre  gives the pure curves
 */
public record FrictionEllipse(Tyre tyre) implements CombinedSlip {

    @Override
    public TyreForce force(double slipAngle, double slipRatio, double loadN, double inclination, double pressure) {
        double ratio = Math.max(-1.0, slipRatio);
        double longitudinal = tyre.longitudinal(ratio, loadN, inclination, pressure);
        if (Math.abs(ratio) > tyre.peakSlipRatio(loadN, inclination, pressure)) {
            return new TyreForce(longitudinal, 0.0);
        }
        return new TyreForce(longitudinal, lateralGiven(slipAngle, longitudinal, loadN, inclination, pressure));
    }

    /**
     * Returns the lateral force left beside a longitudinal one, N; zero where that takes all.
     *
     * @param longitudinalForceN  N, either sign
     */
    public double lateralGiven(
            double slipAngle, double longitudinalForceN, double loadN, double inclination, double pressure) {
        double peak = tyre.longitudinalPeak(loadN, inclination, pressure);
        double used = peak > 0.0 ? longitudinalForceN / peak : 0.0;
        return tyre.lateral(slipAngle, loadN, inclination, pressure) * Math.sqrt(Math.max(0.0, 1.0 - used * used));
    }
}
