/**
 * Body and suspension: how the weight moves.
 *
 * <p>In: accelerations, downforce and the forces that the tyres hand to the body. Out: heave, pitch and roll in time or at
 * rest, and the load of each wheel. Wheels are numbered 0 front left, 1 front right, 2 rear left, 3 rear right.
 */
@NullMarked
package setwright.core.car.body;

import org.jspecify.annotations.NullMarked;
