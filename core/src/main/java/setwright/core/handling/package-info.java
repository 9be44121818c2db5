/**
 * How the car answers the driver, corner by corner and phase by phase.
 *
 * <p>In: a {@link setwright.core.circuit.Stint} and the {@link setwright.core.car.CarSheet}. Out: a {@link
 * setwright.core.handling.HandlingTrace} (balance at every sample) and one {@link setwright.core.handling.CornerPass} for
 * every lap through every corner: the evidence table that everything after it reads.
 */
@NullMarked
package setwright.core.handling;

import org.jspecify.annotations.NullMarked;
