/**
 * Car sheets: what a user knows of a car.
 *
 * <p>In: a YAML file. Out: {@link setwright.core.car.CarSheet} in SI units, with what was assumed.
 */
@NullMarked
package setwright.intake.car;

import org.jspecify.annotations.NullMarked;
