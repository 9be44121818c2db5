package setwright.core.car.tyre;

/**
 * One tyre: pure slip forces, each on its own curve, and combined slip from them.
 *
 * <p>Signs: slip angle and lateral force have the same sign (the opposite of ISO 8855's slip angle, as is usual for
 * balance); slip ratio is {@code (omega R - v) / v}, positive driving. Camber is negative when the top of the wheel leans
 * toward the inside of the axle; {@code inclination} is the camber seen from the turn: negative when the wheel leans toward
 * the side to which a positive lateral force points. So {@code F(-slip, -inclination) = -F(slip, inclination)}. Pressure is
 * given over the tyre's best pressure.
 */
public interface Tyre {

    /**
     * Returns the lateral force without longitudinal slip, N.
     *
     * @param slipAngle    rad
     * @param loadN        vertical load, N, &gt;= 0
     * @param inclination  rad, negative when leaning into the turn
     * @param pressure     over the best pressure, about 1
     */
    double lateral(double slipAngle, double loadN, double inclination, double pressure);

    /**
     * Returns the longitudinal force without slip angle, N.
     *
     * @param slipRatio  0 rolling freely, positive driving, -1 locked
     */
    double longitudinal(double slipRatio, double loadN, double inclination, double pressure);

    /** Returns the greatest lateral force, N. */
    double lateralPeak(double loadN, double inclination, double pressure);

    /** Returns the greatest longitudinal force, N. */
    double longitudinalPeak(double loadN, double inclination, double pressure);

    /** Returns the slip angle at which the lateral force peaks, rad, &gt; 0. */
    double peakSlipAngle(double loadN, double inclination, double pressure);

    /** Returns the slip ratio at which the longitudinal force peaks, &gt; 0. */
    double peakSlipRatio(double loadN, double inclination, double pressure);
}
