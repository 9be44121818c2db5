package setwright.core.simulation.vehicle;

/**
 * What hands and feet do at a moment.
 *
 * @param steerRad  mean angle of the front wheels, rad, left positive
 * @param throttle  0..1
 * @param brake     of {@link TransientCar#greatestBrakeN}, 0..1
 */
public record Inputs(double steerRad, double throttle, double brake) {}
