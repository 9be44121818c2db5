/**
 * What sensors other than those of the motion tell of the car: dampers, ride heights, brake pressures, tyres, steering torque.
 *
 * <p>In: the samples and laps of a stint, its motion, its passes and the car sheet. Out: {@code ChassisEvidence}: figures with their
 * intervals over laps where the channels are there, and what could not be looked at, with the reason. Decides nothing.
 */
@NullMarked
package setwright.core.chassis;

import org.jspecify.annotations.NullMarked;
