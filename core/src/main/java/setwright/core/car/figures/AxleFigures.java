package setwright.core.car.figures;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One axle at rest with the fuel of the start, which is taken to lie at the centre of mass.
 *
 * @param loadN         of both wheels together, N
 * @param sprungMassKg  carried by both springs together, kg
 * @param ride          on its springs, when the spring rate is on the sheet
 * @param roll          against roll, when springs and bar are known
 */
public record AxleFigures(double loadN, double sprungMassKg, Optional<Ride> ride, Optional<Roll> roll) {

    /**
     * One wheel on its spring.
     *
     * @param springNPerM    at the spring, N/m
     * @param wheelRateNPerM at the wheel: spring times motion ratio squared, N/m
     * @param rideRateNPerM  with the tyre in series, N/m
     * @param frequencyHz    of the body on the ride rate, Hz
     * @param damping        when the damper is known
     */
    public record Ride(
            double springNPerM,
            double wheelRateNPerM,
            double rideRateNPerM,
            double frequencyHz,
            Optional<Damping> damping) {}

    /**
     * Damping over critical damping of the body on the wheel rate.
     *
     * @param bumpLow      below the knee
     * @param bumpHigh     above it
     * @param reboundLow   below the knee
     * @param reboundHigh  above it
     */
    public record Damping(double bumpLow, double bumpHigh, double reboundLow, double reboundHigh) {}

    /**
     * Resistance to roll.
     *
     * @param springsNmPerRad  of the springs, Nm/rad
     * @param barNmPerRad      of the bar, Nm/rad
     * @param totalNmPerRad    springs and bar, with the tyres in series, Nm/rad
     */
    public record Roll(double springsNmPerRad, double barNmPerRad, double totalNmPerRad) {
        /** Returns springs and bar on rigid tyres, Nm/rad. */
        public double suspensionNmPerRad() {
            return springsNmPerRad + barNmPerRad;
        }
    }

    /** Returns the load of one wheel, N. */
    public double wheelLoadN() {
        return 0.5 * loadN;
    }

    /** Returns the ride frequency, Hz, when known. */
    public OptionalDouble frequencyHz() {
        return ride.stream().mapToDouble(Ride::frequencyHz).findFirst();
    }
}
