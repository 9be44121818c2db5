/**
 * The adjustable items of a car: what each is called, measured in and acts on.
 *
 * <p>In: a name and a unit from a sheet. Out: {@link setwright.core.car.setup.SetupItemKind} with possible and usual values
 * and the value in SI units. To add an item, add a {@link setwright.core.car.setup.SetupFamily}.
 */
@NullMarked
package setwright.core.car.setup;

import org.jspecify.annotations.NullMarked;
