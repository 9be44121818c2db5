package setwright.core.limit;

/**
 * A place on a quasi-steady lap.
 *
 * @param stationM     along the line, m
 * @param curvature    of the line there, 1/m, left positive
 * @param speedMps     m/s
 * @param forwardMps2  acceleration along the path, m/s²
 * @param lateralMps2  across it, m/s², left positive
 * @param balanceRad   front less rear slip angle in the sense of the turn, rad; positive understeers
 * @param steerRad     mean angle of the front wheels, rad, left positive
 * @param share        lateral acceleration over the greatest at this acceleration along, 0..1
 * @param limitedBy    what keeps the car from being faster
 * @param gear         counted from 1; 0 when the car has none
 */
public record Station(
        double stationM,
        double curvature,
        double speedMps,
        double forwardMps2,
        double lateralMps2,
        double balanceRad,
        double steerRad,
        double share,
        LimitedBy limitedBy,
        int gear) {}
