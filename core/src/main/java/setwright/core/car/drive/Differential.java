package setwright.core.car.drive;

/**
 * A limited-slip differential: a preload and ramps that grow with the torque through it, on power and on the overrun.
 *
 * <p>It hands torque from the faster wheel to the slower one, up to {@code preload + lock |T|}; less when less is enough to
 * turn both alike. A spool is one that never runs out of torque. (Milliken and Milliken, Race Car Vehicle Dynamics, SAE
 * 1995, chapter 20, value from memory.)
 *
 * @param preloadNm  torque difference that it holds without load, N m
 * @param powerLock  share of the driving torque added, 0..1
 * @param coastLock  share of the overrun torque added, 0..1
 */
public record Differential(double preloadNm, double powerLock, double coastLock) {

    /** Returns the greatest torque difference, N m, at a torque through the differential, N m (negative on the overrun). */
    public double lockNm(double torqueNm) {
        return preloadNm + (torqueNm >= 0.0 ? powerLock * torqueNm : -coastLock * torqueNm);
    }

    /**
     * Returns the force that moves from the faster wheel to the slower one, N: half of the difference between them.
     *
     * @param slipDifference  slip ratio by which the faster wheel would lead with no torque handed over
     * @param stiffnessN      longitudinal stiffness of one tyre, N per unit of slip ratio
     * @param torqueNm        through the differential
     * @param tyreRadiusM     m
     */
    public double handedN(double slipDifference, double stiffnessN, double torqueNm, double tyreRadiusM) {
        double most = 0.5 * lockNm(torqueNm) / tyreRadiusM;
        if (most <= 0.0) {
            return 0.0;
        }
        // equal speeds need half of the stiffness times the difference; the smooth form has both limits
        return most * tanh(0.5 * stiffnessN * slipDifference / most);
    }

    /** Hyperbolic tangent to a rounding of 1; the library's takes several times as long, and a replay asks millions of times. */
    private static double tanh(double x) {
        double shrunk = Math.exp(-2.0 * Math.abs(x));
        return Math.copySign((1.0 - shrunk) / (1.0 + shrunk), x);
    }
}
