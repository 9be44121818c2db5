package setwright.core.car.body;

/**
 * One axle's suspension, all rates at the wheel.
 *
 * <p>The tyre's spring stands in series with the suspension: {@code k_ride = k k_t / (k + k_t)} (Milliken and Milliken, Race
 * Car Vehicle Dynamics, SAE 1995, chapter 16, value from memory). Wheels have no mass of their own in the equations of
 * the body: wheel hop lies an order of magnitude above what a driver's inputs excite.
 *
 * @param springNPerM          wheel rate of the spring, N/m
 * @param barNPerM             wheel rate of the anti-roll bar when the wheels move in opposite directions, N/m
 * @param tyreNPerM            vertical rate of one tyre, N/m
 * @param damper               at the wheel
 * @param bumpStopGapM         compression from rest until the bump stop is met, m
 * @param bumpStopNPerM        rate that the stop adds, N/m
 * @param rollCentreHeightM    above the ground, m
 * @param antiShare            share of the longitudinal load transfer that passes through the links at once, 0..1
 * @param trackM               m
 * @param unsprungMassKg       of both wheels, kg
 * @param unsprungHeightM      of its centre of mass, m
 */
public record Axle(
        double springNPerM,
        double barNPerM,
        double tyreNPerM,
        Damper damper,
        double bumpStopGapM,
        double bumpStopNPerM,
        double rollCentreHeightM,
        double antiShare,
        double trackM,
        double unsprungMassKg,
        double unsprungHeightM) {

    /** Returns the ride rate of one wheel when both move together, N/m. */
    public double rideRate() {
        return series(springNPerM, tyreNPerM);
    }

    /** Returns the rate of one wheel when they move in opposite directions, N/m. */
    public double rollRate() {
        return series(springNPerM + barNPerM, tyreNPerM);
    }

    /** Returns the roll stiffness with the tyres, N m/rad: {@code k t^2 / 2}. */
    public double rollStiffness() {
        return 0.5 * rollRate() * trackM * trackM;
    }

    /**
     * Returns how much of the body's movement the damper sees: the tyre takes the rest. Exact for slow movement.
     */
    public double damperShare() {
        double share = tyreNPerM / (springNPerM + tyreNPerM);
        return share * share;
    }

    /** Returns the force of the bump stop, N. */
    double bumpStop(double compressionM) {
        return compressionM > bumpStopGapM ? bumpStopNPerM * (compressionM - bumpStopGapM) : 0.0;
    }

    private static double series(double one, double other) {
        return one * other / (one + other);
    }
}
