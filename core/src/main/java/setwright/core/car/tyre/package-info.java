/**
 * Tyres: force from slip, load, camber and pressure.
 *
 * <p>In: slip angle, slip ratio and what the wheel is pressed down with. Out: forces at the contact patch. To add a tyre,
 * implement {@link setwright.core.car.tyre.Tyre}; {@link setwright.core.car.tyre.CombinedSlip} works with any.
 *
 * <p>{@link setwright.core.car.tyre.MagicFormula1987} is a published tyre, {@link setwright.core.car.tyre.RaceTyre} our own
 * arrangement of what racing engineers speak of. Published in the latter: the curve, a peak friction that falls linearly
 * with load (as in the 1987 set), the friction ellipse, camber thrust as a horizontal shift. Common practice, without a
 * law behind it: parabolas over camber and pressure, stiffness linear in pressure, a power of load for the slip angle at
 * the peak, and every floor.
 */
@NullMarked
package setwright.core.car.tyre;

import org.jspecify.annotations.NullMarked;
