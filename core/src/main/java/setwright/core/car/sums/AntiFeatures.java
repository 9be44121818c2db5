package setwright.core.car.sums;

/**
 * What share of the longitudinal load transfer the suspension links carry, so that springs and dampers do not see it.
 *
 * <p>The side-view angle is that of the line from the contact patch (outboard brakes, live axle) or from the wheel centre
 * (torque from a differential on the chassis) to the side-view instant centre, above the road, rad.
 *
 * <p><b>Source:</b> W. F. Milliken, D. L. Milliken, <i>Race Car Vehicle Dynamics</i>, SAE, 1995, ch. 17 (formulas from
 * memory).
 */
public final class AntiFeatures {
    private AntiFeatures() {}

    /**
     * Returns the anti-dive share of the front axle; 1 is all of the transfer.
     *
     * @param frontBrakeShare  of the braking force, 0..1
     */
    public static double antiDive(double frontBrakeShare, double angleRad, double wheelbaseM, double heightM) {
        return frontBrakeShare * Math.tan(angleRad) * wheelbaseM / heightM;
    }

    /** Returns the anti-lift share of the rear axle under braking. */
    public static double antiLift(double frontBrakeShare, double angleRad, double wheelbaseM, double heightM) {
        return antiDive(1.0 - frontBrakeShare, angleRad, wheelbaseM, heightM);
    }

    /** Returns the anti-squat share of the rear axle of a rear-drive car. */
    public static double antiSquat(double angleRad, double wheelbaseM, double heightM) {
        return antiDive(1.0, angleRad, wheelbaseM, heightM);
    }
}
