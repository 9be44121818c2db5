package setwright.core.car.sums;

/**
 * A standing start on constant power at the wheels, without resistance or limit of grip: the least that a time can be.
 *
 * <p><b>Source:</b> energy balance, {@code P t = m v^2 / 2}.
 */
public final class ConstantPower {
    private ConstantPower() {}

    /** Returns the time from rest to a speed, s. */
    public static double timeS(double massKg, double powerW, double speedMps) {
        return massKg * speedMps * speedMps / (2.0 * powerW);
    }

    /** Returns the distance from rest to a speed, m. */
    public static double distanceM(double massKg, double powerW, double speedMps) {
        return massKg * speedMps * speedMps * speedMps / (3.0 * powerW);
    }
}
