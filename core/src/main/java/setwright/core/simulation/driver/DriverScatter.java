package setwright.core.simulation.driver;

/**
 * How much a driver differs from himself, corner by corner and lap by lap; standard deviations.
 *
 * @param brakePointM   where he brakes, m
 * @param pace          share of the cornering speed
 * @param lineM         offset of his line at the apex, m
 * @param trail         relative depth of trail braking
 * @param pickUpM       where he goes back to the throttle, m
 * @param lapPace       share by which whole laps differ in cornering speed
 * @param steerRad      restlessness of the hands, at the road wheels, rad
 */
public record DriverScatter(
        double brakePointM, double pace, double lineM, double trail, double pickUpM, double lapPace, double steerRad) {

    /** A driver who does the same every time. */
    public static final DriverScatter NONE = new DriverScatter(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);

    /** Returns a good driver: braking points within three metres (orientation values of the trade, common practice). */
    public static DriverScatter steady() {
        return new DriverScatter(2.0, 0.002, 0.2, 0.03, 1.3, 0.0008, 0.0005);
    }

    /** Returns a multiple of these deviations. */
    public DriverScatter times(double factor) {
        return new DriverScatter(
                factor * brakePointM,
                factor * pace,
                factor * lineM,
                factor * trail,
                factor * pickUpM,
                factor * lapPace,
                factor * steerRad);
    }
}
