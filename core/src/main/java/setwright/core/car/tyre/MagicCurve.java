package setwright.core.car.tyre;

/**
 * The Magic Formula at one load and camber: {@code y = D sin(C atan(B phi)) + S_v} with
 * {@code phi = (1 - E)(x + S_h) + (E / B) atan(B (x + S_h))}.
 *
 * <p>Source: E. Bakker, L. Nyborg, H. B. Pacejka, "Tyre modelling for use in vehicle dynamics studies", SAE 870421, 1987.
 * The slip {@code x} is in the paper's units, degrees or per cent; B and S_h are to match.
 *
 * @param stiffness        B, 1 per unit of slip, &gt; 0
 * @param shape            C, &gt; 1
 * @param peak             D, N or N m, either sign
 * @param curvature        E, below 1, or the curve has no single peak
 * @param horizontalShift  S_h, units of slip
 * @param verticalShift    S_v, units of D
 */
public record MagicCurve(
        double stiffness, double shape, double peak, double curvature, double horizontalShift, double verticalShift) {

    /** No load, no force, at any slip. */
    static final MagicCurve NOTHING = new MagicCurve(1.0, 1.5, 0.0, 0.0, 0.0, 0.0);

    /** Newton's method doubles its digits each time: from a start without any, six passes; more never hurt. */
    private static final int PASSES = 60;

    /** @throws IllegalArgumentException if B, C or E is outside the range given above */
    public MagicCurve {
        if (!(stiffness > 0.0 && shape > 1.0 && curvature < 1.0)) {
            throw new IllegalArgumentException("a Magic Formula curve needs B > 0, C > 1, E < 1, got B " + stiffness
                    + ", C " + shape + ", E " + curvature);
        }
    }

    /**
     * Returns the force or moment, in units of D.
     *
     * @param slip  degrees or per cent
     */
    public double value(double slip) {
        double shifted = slip + horizontalShift;
        double bent = (1.0 - curvature) * shifted + curvature / stiffness * Math.atan(stiffness * shifted);
        return peak * Math.sin(shape * Math.atan(stiffness * bent)) + verticalShift;
    }

    /** Returns the slope where the curve crosses its centre, {@code B C D}. */
    public double centreSlope() {
        return stiffness * shape * peak;
    }

    /** Returns the value at the peak on the side of positive slip, {@code D + S_v}. */
    public double peakValue() {
        return peak + verticalShift;
    }

    /**
     * Returns the slip at the peak on the side of positive slip.
     *
     * <p>With {@code z = B (x + S_h)} it is where {@code (1 - E) z + E atan z = tan(pi / (2 C))}. Started at the right-hand
     * side's value, Newton's method runs to the solution from one side, for any E below 1.
     */
    public double peakSlip() {
        double target = Math.tan(Math.PI / (2.0 * shape));
        double z = target;
        for (int pass = 0; pass < PASSES; pass++) {
            double miss = (1.0 - curvature) * z + curvature * Math.atan(z) - target;
            double step = miss / (1.0 - curvature + curvature / (1.0 + z * z));
            z -= step;
            if (Math.abs(step) <= 1.0e-15 * target) {
                break;
            }
        }
        return z / stiffness - horizontalShift;
    }
}
