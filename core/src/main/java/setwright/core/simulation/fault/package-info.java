/**
 * What can be wrong with an invented car and how a balanced one is made, so that a bench knows what it put in.
 *
 * <p>In: a {@link setwright.core.car.CarSheet}, and true values of {@link setwright.core.car.model.Parameter}. Out: {@link
 * setwright.core.simulation.fault.Fault}s with the setup changes that make them, and {@link
 * setwright.core.simulation.fault.BalancedTruth}. To add a fault, add a line to {@link
 * setwright.core.simulation.fault.FaultCatalogue}.
 */
@NullMarked
package setwright.core.simulation.fault;

import org.jspecify.annotations.NullMarked;
