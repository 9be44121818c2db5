package setwright.core.car.tyre;

/**
 * How force grows with slip, both as shares of their values at the peak: {@code sin(C atan(B x))} with
 * {@code B = tan(pi / (2 C))}, so that the peak is 1 at {@code x = 1}.
 *
 * <p>This is the Magic Formula (Bakker, Nyborg, Pacejka, SAE 870421, 1987) without its curvature term (E = 0). Odd in
 * {@code x}; far beyond the peak it falls to {@code sin(C pi / 2)}. B is kept, because a tangent costs as much as the curve.
 */
public final class CurveShape {
    private final double factor;
    private final double stiffness;

    private CurveShape(double factor) {
        this.factor = factor;
        this.stiffness = Math.tan(Math.PI / (2.0 * factor));
    }

    /**
     * Returns the shape for a shape factor C.
     *
     * @param factor  C, above 1 (or there is no peak) and below 2 (or the force changes sign far beyond it); about 1.4 for
     *     lateral, 1.5 for longitudinal force (near the 1.30 and 1.65 of the 1987 set, which has a curvature term besides)
     * @throws IllegalArgumentException if {@code factor} is outside 1.05..1.95
     */
    public static CurveShape of(double factor) {
        if (!(factor >= 1.05 && factor <= 1.95)) {
            throw new IllegalArgumentException("shape factor of a tyre curve must be 1.05 to 1.95, got " + factor);
        }
        return new CurveShape(factor);
    }

    /** Returns C. */
    public double factor() {
        return factor;
    }

    /** Returns the slope at zero slip, as share of peak force per share of peak slip: {@code B C}. */
    public double initialSlope() {
        return stiffness * factor;
    }

    /**
     * Returns the force share, -1..1.
     *
     * @param slipShare  slip over slip at the peak, any sign
     */
    public double share(double slipShare) {
        return Math.sin(factor * Math.atan(stiffness * slipShare));
    }

    /** Returns the derivative of {@link #share} by the slip share; negative beyond the peak. */
    public double slope(double slipShare) {
        double x = stiffness * slipShare;
        return factor * stiffness * Math.cos(factor * Math.atan(x)) / (1.0 + x * x);
    }

    /**
     * Returns the slip share that gives a force share, on the rising side.
     *
     * @param forceShare  force over peak force; beyond -1 or 1 it is taken as -1 or 1
     * @return slip over slip at the peak, -1..1
     */
    public double slipShare(double forceShare) {
        double rest = 1.0 - forceShare * forceShare;
        if (!(rest > 0.0)) {
            return Math.signum(forceShare);
        }
        // An arc sine by way of the arc tangent: the library's arc sine takes ten times as long.
        return Math.tan(Math.atan(forceShare / Math.sqrt(rest)) / factor) / stiffness;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CurveShape shape && Double.compare(shape.factor, factor) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(factor);
    }

    @Override
    public String toString() {
        return "CurveShape[factor=" + factor + "]";
    }
}
