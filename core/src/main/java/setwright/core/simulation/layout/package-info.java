/**
 * Invented circuits, drawn from straights and bends.
 *
 * <p>In: {@link setwright.core.simulation.layout.CircuitElement}s in driving order, or a seed. Out: a {@link
 * setwright.core.simulation.layout.CircuitPlan} that closes, and its {@link setwright.core.circuit.ReferenceLine} with continuous
 * curvature, for a simulated drive. To add an unevenness of another shape, see {@link
 * setwright.core.simulation.layout.Bump}.
 */
@NullMarked
package setwright.core.simulation.layout;

import org.jspecify.annotations.NullMarked;
