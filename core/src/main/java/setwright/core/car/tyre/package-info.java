/**
 * Tyres: force from slip, load, camber and pressure.
 *
 * <p>In: slip angle, slip ratio and what the wheel is pressed down with. Out: forces at the contact patch. To add a tyre,
 * implement {@link setwright.core.car.tyre.Tyre}; the combined slip comes with it.
 */
@NullMarked
package setwright.core.car.tyre;

import org.jspecify.annotations.NullMarked;
