package setwright.core.car.sums;

/**
 * Roll stiffness of an axle. Rates are at the wheel; a bar's wheel rate is the force it adds at each wheel per metre that this
 * wheel moves while the other moves as far the other way.
 *
 * <p><b>Source:</b> virtual work: each wheel moves {@code t/2} per rad of roll, hence {@code K = (k_w + k_bar) t^2 / 2}.
 */
public final class RollStiffness {
    private RollStiffness() {}

    /**
     * Returns the roll stiffness, N m/rad.
     *
     * @param springWheelRate  N/m at each wheel
     * @param barWheelRate     N/m at each wheel
     * @param trackM           m
     */
    public static double axle(double springWheelRate, double barWheelRate, double trackM) {
        return (springWheelRate + barWheelRate) * trackM * trackM / 2.0;
    }

    /** Returns the bar's wheel rate, N/m, that brings an axle to a roll stiffness (N m/rad); negative: springs alone exceed it. */
    public static double barFor(double rollStiffness, double springWheelRate, double trackM) {
        return 2.0 * rollStiffness / (trackM * trackM) - springWheelRate;
    }

    /** Returns the front axle's share of the roll stiffness. */
    public static double frontShare(double front, double rear) {
        return front / (front + rear);
    }
}
