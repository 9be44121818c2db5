package setwright.core.car.tyre;

/**
 * What inclining the wheel does to a {@link RaceTyre}.
 *
 * <p>Common practice, no published law: a parabola about the best inclination for lateral friction, a parabola about the
 * upright wheel for longitudinal friction, and camber thrust as slip angle that the wheel seems to have already.
 *
 * @param bestInclination        inclination with the most lateral friction, rad, &lt;= 0 (leaning into the turn)
 * @param lateralLossPerRad2     share of lateral friction lost per squared rad off the best inclination, &gt;= 0
 * @param longitudinalLossPerRad2  share of longitudinal friction lost per squared rad of inclination, &gt;= 0
 * @param thrustSlipPerRad       slip angle that the inclination is worth, rad per rad, &gt;= 0; the 1987 set has
 *     88 N/deg of camber thrust against 1027 N/deg of cornering stiffness at 4 kN, that is 0.085
 */
public record CamberEffect(
        double bestInclination, double lateralLossPerRad2, double longitudinalLossPerRad2, double thrustSlipPerRad) {

    /** A tyre that does not mind its inclination. */
    public static final CamberEffect NONE = new CamberEffect(0.0, 0.0, 0.0, 0.0);

    /** @throws IllegalArgumentException if a value is outside the range given above */
    public CamberEffect {
        Range.check("best inclination of a tyre, rad", bestInclination, -0.35, 0.0);
        Range.check("lateral friction lost by camber per rad2", lateralLossPerRad2, 0.0, 1.0e3);
        Range.check("longitudinal friction lost by camber per rad2", longitudinalLossPerRad2, 0.0, 1.0e3);
        Range.check("camber thrust as slip angle, rad per rad", thrustSlipPerRad, 0.0, 1.0);
    }

    double lateralFactor(double inclination) {
        double off = inclination - bestInclination;
        return Math.max(RaceTyre.LEAST_FACTOR, 1.0 - lateralLossPerRad2 * off * off);
    }

    double longitudinalFactor(double inclination) {
        return Math.max(RaceTyre.LEAST_FACTOR, 1.0 - longitudinalLossPerRad2 * inclination * inclination);
    }
}
