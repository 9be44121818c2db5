package setwright.core.car.sums;

/**
 * Damping of one corner of the car. Motion ratio: damper travel over wheel travel.
 *
 * <p><b>Source:</b> the damped single mass oscillator, any textbook of vibration.
 */
public final class Damping {
    private Damping() {}

    /** Returns the critical damping, N s/m, of a mass (kg) on a rate (N/m). */
    public static double critical(double rate, double massKg) {
        return 2.0 * Math.sqrt(rate * massKg);
    }

    /** Returns the damping ratio of a damping at the wheel (N s/m): 1 is critical. */
    public static double ratio(double wheelDamping, double rate, double massKg) {
        return wheelDamping / critical(rate, massKg);
    }

    /** Returns the damper's rate at the wheel, N s/m. */
    public static double atWheel(double damperRate, double motionRatio) {
        return damperRate * motionRatio * motionRatio;
    }

    /** Returns the damper's own rate that gives a damping at the wheel, N s/m. */
    public static double atDamper(double wheelDamping, double motionRatio) {
        return wheelDamping / (motionRatio * motionRatio);
    }

    /**
     * Returns by what share of the step a second-order system overshoots.
     *
     * @param ratio  damping ratio, 0..1
     */
    public static double overshoot(double ratio) {
        return ratio < 1.0 ? Math.exp(-Math.PI * ratio / Math.sqrt(1.0 - ratio * ratio)) : 0.0;
    }

    /**
     * Returns the damping ratio of a second-order system that overshoots by this share.
     *
     * @param overshoot  share of the step, above 0 and below 1
     */
    public static double ratioOf(double overshoot) {
        double decrement = Math.log(overshoot);
        return -decrement / Math.hypot(Math.PI, decrement);
    }
}
