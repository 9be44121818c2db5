/**
 * How hard each axle works: sideslip, slip angles and use of grip at every sample, and what follows from them.
 *
 * <p>In: a {@link setwright.core.circuit.Stint}, its {@link setwright.core.handling.HandlingTrace} and the {@link
 * setwright.core.car.CarSheet}. Out: {@link setwright.core.slip.AxleTrace} (at every sample), the axles' grip curves of the
 * stint, wheels that locked or spun, and gestures of the hands with the axle that they answer, together {@link
 * setwright.core.slip.AxleEvidence}.
 */
@NullMarked
package setwright.core.slip;

import org.jspecify.annotations.NullMarked;
