package setwright.core.car.tyre;

/**
 * What pressure does to a {@link RaceTyre}, with pressure over the best pressure.
 *
 * <p>Common practice, no universal law: friction has an optimum, cornering stiffness grows with pressure.
 *
 * @param stiffnessByPressure  relative gain of cornering stiffness per relative pressure, -3..3; about 0.3
 *     (common practice, from memory)
 * @param frictionLoss         share of friction lost per squared relative pressure off the best, &gt;= 0
 */
public record PressureEffect(double stiffnessByPressure, double frictionLoss) {

    /** A tyre that does not mind its pressure. */
    public static final PressureEffect NONE = new PressureEffect(0.0, 0.0);

    /** @throws IllegalArgumentException if a value is outside the range given above */
    public PressureEffect {
        Range.check("stiffness of a tyre by pressure", stiffnessByPressure, -3.0, 3.0);
        Range.check("friction lost by pressure", frictionLoss, 0.0, 1.0e3);
    }

    double stiffnessFactor(double pressure) {
        return Math.max(RaceTyre.LEAST_FACTOR, 1.0 + stiffnessByPressure * (pressure - 1.0));
    }

    double frictionFactor(double pressure) {
        double off = pressure - 1.0;
        return Math.max(RaceTyre.LEAST_FACTOR, 1.0 - frictionLoss * off * off);
    }
}
