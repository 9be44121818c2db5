/**
 * Drive and brakes: what reaches the wheels lengthwise.
 *
 * <p>In: speed, pedals, demand for longitudinal force. Out: force of each axle, the difference between left and right that
 * the differential makes, and the greatest force that the engine gives.
 */
@NullMarked
package setwright.core.car.drive;

import org.jspecify.annotations.NullMarked;
