package setwright.core.car.model;

/**
 * The motion of a car at one moment, as recorded; ISO 8855 signs.
 *
 * @param speed            m/s
 * @param forward          longitudinal acceleration, m/s²
 * @param lateral          lateral acceleration, m/s²
 * @param yawRate          rad/s
 * @param yawAcceleration  rad/s²
 * @param steer            mean road wheel angle, rad
 * @param throttle         0..1
 * @param brake            0..1
 */
public record Moment(
        double speed,
        double forward,
        double lateral,
        double yawRate,
        double yawAcceleration,
        double steer,
        double throttle,
        double brake) {}
