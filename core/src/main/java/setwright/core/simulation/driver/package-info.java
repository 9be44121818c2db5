/**
 * A driver who laps a car: what he knows of it, what he plans, how hands and feet follow, how he scatters and reacts.
 *
 * <p>In: a car, the line to follow, a {@link setwright.core.simulation.driver.DriverStyle}. Out: a {@link
 * setwright.core.simulation.driver.Driver} who turns what the car does into {@link setwright.core.simulation.vehicle.Inputs}, and the
 * events that really happened to his hands. To add a habit, add it to the style and to the one class that acts on it.
 */
@NullMarked
package setwright.core.simulation.driver;

import org.jspecify.annotations.NullMarked;
