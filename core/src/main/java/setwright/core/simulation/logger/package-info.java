/**
 * A data logger on board of a simulated car: what it keeps, how often, how wrongly, and what it calls it.
 *
 * <p>In: a {@link setwright.core.simulation.driven.DriveHistory} without noise and a {@link
 * setwright.core.simulation.logger.LoggerPlan}. Out: a {@link setwright.core.simulation.logger.LoggedTable}, to be written as a
 * file and read in again like any recording. To log another quantity, add it to {@link
 * setwright.core.simulation.logger.ChannelSet}, {@code Sensed}, {@code TypicalNoise} and {@code Headers}.
 */
@NullMarked
package setwright.core.simulation.logger;

import org.jspecify.annotations.NullMarked;
