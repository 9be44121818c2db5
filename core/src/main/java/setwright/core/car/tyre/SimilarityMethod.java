package setwright.core.car.tyre;

/**
 * Combined slip by similarity: each force is read on its own pure curve at the same normalised slip, and turned into the
 * direction of the slip.
 * <pre>
 * sigma_x = kappa / (1 + kappa),  sigma_y = tan(alpha) / (1 + kappa)
 * s = sigma / sigma at the peak of its own curve,  rho = |s|
 * F_x = (s_x / rho) F_x0(rho),  F_y = (s_y / rho) F_y0(rho)
 * </pre>
 * Source: Pacejka's similarity approach, from memory. Driving and braking have the same peak slip ratio but not the same
 * sigma there; each is normalised by its own. With one kind of slip alone the pure curve is returned exactly. Camber thrust
 * counts with the share of the slip that is lateral: it is lost when the wheel slips along its plane only.
 *
 * @param tyre  gives the pure curves
 */
public record SimilarityMethod(Tyre tyre) implements CombinedSlip {

    /** A locked wheel has no finite sigma; this near to it the curves no longer change. */
    private static final double LEAST_ROLL = 1.0e-6;

    @Override
    public TyreForce force(double slipAngle, double slipRatio, double loadN, double inclination, double pressure) {
        double ratio = Math.max(LEAST_ROLL - 1.0, slipRatio);
        double roll = 1.0 + ratio;
        double peakRatio = Math.copySign(tyre.peakSlipRatio(loadN, inclination, pressure), ratio);
        double sigmaPeakX = Math.abs(peakRatio / (1.0 + peakRatio));
        double sigmaPeakY = Math.tan(tyre.peakSlipAngle(loadN, inclination, pressure));
        double along = ratio / roll / sigmaPeakX;
        double across = Math.tan(slipAngle) / roll / sigmaPeakY;
        if (along == 0.0) {
            return new TyreForce(0.0, tyre.lateral(slipAngle, loadN, inclination, pressure));
        }
        double rho = Math.hypot(along, across);
        double pureRatio = slipRatioAt(Math.copySign(rho * sigmaPeakX, along));
        double pureAngle = Math.atan(Math.copySign(rho * sigmaPeakY, across));
        return new TyreForce(
                Math.abs(along) / rho * tyre.longitudinal(pureRatio, loadN, inclination, pressure),
                Math.abs(across) / rho * tyre.lateral(pureAngle, loadN, inclination, pressure));
    }

    /** Undoes {@code sigma = kappa / (1 + kappa)}; driving slip has no bound, but sigma stays below 1. */
    private static double slipRatioAt(double sigma) {
        return sigma < 0.0 ? sigma / (1.0 - sigma) : sigma / Math.max(LEAST_ROLL, 1.0 - sigma);
    }
}
