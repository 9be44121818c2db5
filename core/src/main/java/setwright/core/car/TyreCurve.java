package setwright.core.car;

/**
 * How an axle's lateral force grows with its slip angle, both as shares of their values at the peak.
 *
 * <p>The shape is {@code sin(C atan(B x))}, the Magic Formula without curvature term, scaled so that the peak lies at 1:
 * {@code B = tan(pi / (2 C))}. With {@code C = 1.4} it follows the published passenger-car set at 4 kN (Bakker, Nyborg,
 * Pacejka, SAE 870421, 1987, C = 1.30 with E = -0.71) to 0.035 of the peak force up to the peak; only ratios enter the
 * balance reference, so the absolute stiffness of a racing tyre does not matter here.
 */
public final class TyreCurve {
    private static final double SHAPE = 1.4;
    private static final double STIFFNESS = Math.tan(Math.PI / (2.0 * SHAPE));

    /** Slip share per force share where the curve begins. */
    public static final double COMPLIANCE = 1.0 / (SHAPE * STIFFNESS);

    private TyreCurve() {}

    /**
     * Returns the force share at a slip share.
     *
     * @param slipShare  slip angle over that of the peak, &gt;= 0
     * @return force over peak force, 0..1
     */
    public static double forceShare(double slipShare) {
        return Math.sin(SHAPE * Math.atan(STIFFNESS * slipShare));
    }

    /**
     * Returns the slip share that gives a force share, on the rising side.
     *
     * @param forceShare  force over peak force, 0..1
     * @return slip angle over that of the peak, 0..1
     */
    public static double slipShare(double forceShare) {
        return Math.tan(Math.asin(forceShare) / SHAPE) / STIFFNESS;
    }
}
