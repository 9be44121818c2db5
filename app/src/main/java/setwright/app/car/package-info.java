/**
 * What there is to say of a car sheet.
 *
 * <p>In: {@link setwright.core.car.CarSheet}. Out: {@link setwright.app.car.CarCheck}: the figures that follow from it and
 * what an engineer would look at twice.
 */
@NullMarked
package setwright.app.car;

import org.jspecify.annotations.NullMarked;
