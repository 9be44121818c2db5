/**
 * Models of the whole car, from closed form to four wheels.
 *
 * <p>In: masses, lengths, stiffnesses and tyres in SI units. Out: steady states, gains and responses. ISO 8855 axes, left
 * turn positive; slip angles carry the sign of their force.
 */
@NullMarked
package setwright.core.car.model;

import org.jspecify.annotations.NullMarked;
