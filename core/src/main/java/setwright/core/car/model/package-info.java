/**
 * The car as a model: the closed single-track model, and everything that a sheet says and leaves open put together.
 *
 * <p>In: a car sheet, a setup and one value for each uncertain {@link setwright.core.car.model.Parameter}. Out: {@link
 * setwright.core.car.model.CarModel} and what its axles do in a motion ({@link setwright.core.car.model.Cornering}).
 */
@NullMarked
package setwright.core.car.model;

import org.jspecify.annotations.NullMarked;
