/**
 * A data logger: what is left of a simulated drive when a real recorder has had it.
 *
 * <p>In: a {@link setwright.core.simulation.driven.DriveHistory}, the car's sheet and a {@link
 * setwright.core.simulation.logger.LoggerPlan}. Out: a {@link setwright.core.simulation.logger.LoggedTable} with noise, offsets, chosen
 * units and signs, and gaps. To add a channel, add a line to {@link setwright.core.simulation.logger.Logger}.
 */
@NullMarked
package setwright.core.simulation.logger;

import org.jspecify.annotations.NullMarked;
