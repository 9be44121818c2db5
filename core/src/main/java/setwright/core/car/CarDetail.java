package setwright.core.car;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What only a well informed user knows of a car, in SI units. Empty means "not given": whoever needs the value takes a usual
 * one for the kind of car and says so.
 *
 * @param front   front axle
 * @param rear    rear axle
 * @param body    the body on its suspension
 * @param air     aerodynamics
 * @param engine  engine and driveline
 * @param tyre    tyres
 */
public record CarDetail(Axle front, Axle rear, Body body, Air air, Engine engine, Tyre tyre) {

    /** Nothing given. */
    public static final CarDetail NONE =
            new CarDetail(Axle.NONE, Axle.NONE, Body.NONE, Air.NONE, Engine.NONE, Tyre.NONE);

    /**
     * One axle.
     *
     * @param rollCentreHeightM   above the ground at rest, m; may lie below it
     * @param unsprungMassKg      both wheels with what moves with them, kg
     * @param tyreSpringRateNPerM vertical rate of one tyre, N/m
     * @param bumpStopRateNPerM   of one bump stop once touched, at the damper, N/m
     * @param brakeTorqueNmPerPa  of both wheels together, Nm per Pa of pressure in that circuit
     * @param damper              of one wheel
     */
    public record Axle(
            OptionalDouble rollCentreHeightM,
            OptionalDouble unsprungMassKg,
            OptionalDouble tyreSpringRateNPerM,
            OptionalDouble bumpStopRateNPerM,
            OptionalDouble brakeTorqueNmPerPa,
            Optional<Damper> damper) {

        static final Axle NONE = new Axle(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /**
     * Slopes of one damper at the clicks that stand on the sheet. Below the knee the force grows with the low-speed slope,
     * above it further with the high-speed slope; measured at the damper (wheel slope = slope times motion ratio squared).
     *
     * @param bumpLow      N s/m, &gt; 0
     * @param bumpHigh     N s/m, &gt; 0
     * @param reboundLow   N s/m, &gt; 0
     * @param reboundHigh  N s/m, &gt; 0
     * @param kneeMps      damper speed between low and high, m/s, &gt; 0
     * @param perClick     share of the slope that one click stiffer adds, such as 0.05, when known
     */
    public record Damper(
            double bumpLow,
            double bumpHigh,
            double reboundLow,
            double reboundHigh,
            double kneeMps,
            OptionalDouble perClick) {}

    /**
     * The body.
     *
     * @param antiDiveShare    share of the front axle's load transfer under braking that bypasses the springs, 0..1
     * @param antiSquatShare   share of the driven axle's load transfer on the throttle that bypasses the springs, 0..1
     * @param yawInertiaKgM2   about the vertical axis through the centre of mass, without fuel, kg m²
     */
    public record Body(OptionalDouble antiDiveShare, OptionalDouble antiSquatShare, OptionalDouble yawInertiaKgM2) {
        static final Body NONE = new Body(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The air, at the ride heights and wing steps on the sheet.
     *
     * @param dragAreaM2        drag coefficient times area, m²
     * @param downforceFrontM2  downforce coefficient times area on the front axle, m², positive pressing down
     * @param downforceRearM2   on the rear axle
     * @param densityKgPerM3    air density, kg/m³
     */
    public record Air(
            OptionalDouble dragAreaM2,
            OptionalDouble downforceFrontM2,
            OptionalDouble downforceRearM2,
            OptionalDouble densityKgPerM3) {
        static final Air NONE =
                new Air(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Engine and driveline.
     *
     * @param powerW             greatest power at the crank, W
     * @param torque             full-throttle torque at the crank, engine speed rising; empty when not given
     * @param brakingTorqueNm    torque that the closed throttle takes at the crank near the speed limit, Nm, &gt;= 0
     * @param idleRadPerS        engine speed at idle, rad/s
     * @param efficiency         share of the crank's power that reaches the driven wheels, 0..1
     */
    public record Engine(
            OptionalDouble powerW,
            List<TorquePoint> torque,
            OptionalDouble brakingTorqueNm,
            OptionalDouble idleRadPerS,
            OptionalDouble efficiency) {
        static final Engine NONE = new Engine(
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());

        public Engine {
            torque = List.copyOf(torque);
        }
    }

    /**
     * One point of the torque curve.
     *
     * @param radPerS  engine speed, rad/s
     * @param torqueNm at the crank, Nm
     */
    public record TorquePoint(double radPerS, double torqueNm) {}

    /**
     * Tyres of the whole car.
     *
     * @param peakSlipAngleRad  slip angle of the greatest lateral force at usual load, rad
     * @param grip              greatest lateral force over load at usual load
     */
    public record Tyre(OptionalDouble peakSlipAngleRad, OptionalDouble grip) {
        static final Tyre NONE = new Tyre(OptionalDouble.empty(), OptionalDouble.empty());
    }
}
