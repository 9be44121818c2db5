package setwright.core.identification;

import setwright.core.car.model.CarBelief;

/**
 * A car after its laps were looked at.
 *
 * @param belief  what is now known of its parameters
 * @param fit     the same for people
 */
public record FittedCar(CarBelief belief, CarFit fit) {}
