package setwright.core.car.sums;

import org.hipparchus.util.FastMath;

/**
 * Resistance of air and tyres on a flat road without wind, and the speed at which it takes all the power.
 *
 * <p><b>Source:</b> power balance {@code rho/2 C_D A v^3 + c_rr m g v = P}; T. D. Gillespie, <i>Fundamentals of Vehicle
 * Dynamics</i>, SAE, 1992, ch. 4 (from memory). Solved in closed form as the one real root of a cubic.
 *
 * @param densityKgM3     of the air, kg/m3, &gt; 0
 * @param dragAreaM2      drag coefficient times frontal area, m2, &gt; 0
 * @param rollingShare    rolling resistance over weight, &gt;= 0
 * @param massKg          kg, &gt; 0
 */
public record TopSpeed(double densityKgM3, double dragAreaM2, double rollingShare, double massKg) {
    public TopSpeed {
        Require.positive("air density", densityKgM3, "kg/m3");
        Require.positive("drag area", dragAreaM2, "m2");
        Require.notNegative("rolling resistance", rollingShare, "");
        Require.positive("mass", massKg, "kg");
    }

    /** Returns the resisting force at a speed (m/s), N. */
    public double resistanceN(double speedMps) {
        return AeroLoad.dynamicPressurePa(densityKgM3, speedMps) * dragAreaM2 + rollingN();
    }

    private double rollingN() {
        return rollingShare * massKg * Gravity.STANDARD_MPS2;
    }

    /** Returns the power at the wheels (W) that holds a speed (m/s). */
    public double powerW(double speedMps) {
        return resistanceN(speedMps) * speedMps;
    }

    /** Returns the speed, m/s, that a power at the wheels (W, &gt;= 0) can hold. */
    public double speedMps(double powerW) {
        double cubic = 0.5 * densityKgM3 * dragAreaM2;
        double p = rollingN() / cubic;
        double q = powerW / cubic;
        if (p == 0.0) {
            return Math.cbrt(q);
        }
        // v^3 + p v = q; the hyperbolic form loses no digits at low power, where cube roots would cancel.
        double scale = Math.sqrt(p / 3.0);
        return 2.0 * scale * Math.sinh(FastMath.asinh(q / (2.0 * scale * scale * scale)) / 3.0);
    }
}
