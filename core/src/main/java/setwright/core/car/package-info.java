/**
 * The car: what its user knows of it, and the items that may be changed.
 *
 * <p>In: a car sheet's values in SI units, read elsewhere. Out: {@link setwright.core.car.CarSheet} with the adjustable
 * {@link setwright.core.car.SetupItem}s; whatever the user did not know is assumed from the kind of car and says so.
 */
@NullMarked
package setwright.core.car;

import org.jspecify.annotations.NullMarked;
