package setwright.core.car.tyre;

/** Both forces of a tyre that slips along and across at once, from its two pure curves. */
public sealed interface CombinedSlip permits FrictionEllipse, SimilarityMethod {

    /**
     * Returns the force of the road on the tyre.
     *
     * @param slipAngle    rad, within a quarter turn
     * @param slipRatio    -1 locked, 0 rolling freely, positive driving; below -1 it is taken as -1
     * @param loadN        vertical load, N, &gt;= 0
     * @param inclination  rad, as for {@link Tyre}
     * @param pressure     over the best pressure
     */
    TyreForce force(double slipAngle, double slipRatio, double loadN, double inclination, double pressure);
}
