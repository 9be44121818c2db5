package setwright.core.car.sums;

import java.util.OptionalDouble;

/**
 * The fastest circle of a car with downforce whose grip is one friction coefficient, as a mass point.
 *
 * <pre>
 * m v^2 / R = mu (m g + k_z v^2),  with drag:  (m v^2 / R)^2 + (k_x v^2)^2 = mu^2 (m g + k_z v^2)^2
 * </pre>
 *
 * <p><b>Source:</b> force balance; the car of B. Lenzo and V. Rossi, Applied Sciences 10(4), 1498, 2020, serves as check.
 *
 * @param massKg           kg, &gt; 0
 * @param friction         coefficient between tyre and road, &gt; 0
 * @param downforceFactor  downforce over speed squared, N s2/m2, &gt;= 0
 * @param dragFactor       drag over speed squared, N s2/m2, &gt;= 0
 */
public record Cornering(double massKg, double friction, double downforceFactor, double dragFactor) {
    public Cornering {
        Require.positive("mass", massKg, "kg");
        Require.positive("friction", friction, "");
        Require.notNegative("downforce factor", downforceFactor, "N s2/m2");
        Require.notNegative("drag factor", dragFactor, "N s2/m2");
    }

    /** Returns the speed, m/s, that grip allows when drag costs none; empty where downforce outgrows the need. */
    public OptionalDouble withoutDrag(double radiusM) {
        return speed(massKg / radiusM);
    }

    /** Returns the speed, m/s, that grip allows when the driving force against drag is taken from it; empty as above. */
    public OptionalDouble withDrag(double radiusM) {
        return speed(Math.hypot(massKg / radiusM, dragFactor));
    }

    private OptionalDouble speed(double needPerSpeedSquared) {
        double left = needPerSpeedSquared - friction * downforceFactor;
        return left > 0.0
                ? OptionalDouble.of(Math.sqrt(friction * massKg * Gravity.STANDARD_MPS2 / left))
                : OptionalDouble.empty();
    }

    /** Returns the radius, m, from which on grip limits no speed (drag left out); infinite without downforce. */
    public double limitlessRadiusM() {
        return massKg / (friction * downforceFactor);
    }
}
