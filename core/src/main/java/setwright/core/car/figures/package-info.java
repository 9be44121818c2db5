/**
 * The figures that a race engineer works out from a car sheet before any lap is driven.
 *
 * <p>In: {@link setwright.core.car.CarSheet}. Out: {@link setwright.core.car.figures.CarFigures} at rest and at 1 g, with
 * the usual values that were used where the sheet is silent, and what could not be told for want of a value.
 */
@NullMarked
package setwright.core.car.figures;

import org.jspecify.annotations.NullMarked;
