package setwright.core.limit;

/**
 * A car at a speed and at accelerations within its envelope, turning left.
 *
 * @param balanceRad  front less rear slip angle, rad; positive understeers
 * @param steerRad    mean angle of the front wheels, rad
 * @param share       lateral acceleration over the greatest at this acceleration along, 0..1
 * @param tyres       which tyres give out first when more is asked for
 * @param gear        counted from 1; 0 when the car has none
 * @param engineN     force of the engine at the driven wheels, N, negative on the overrun
 * @param brakeN      force of the brakes, N, &gt;= 0
 * @param dragN       of the air, N
 * @param rollingN    rolling resistance, N
 * @param scrubN      force along the path that slip angles cost, N
 */
public record CarState(
        double balanceRad,
        double steerRad,
        double share,
        LimitedBy tyres,
        int gear,
        double engineN,
        double brakeN,
        double dragN,
        double rollingN,
        double scrubN) {}
