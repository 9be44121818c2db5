/**
 * Replay: what a change of setup would have done on the laps that were driven.
 *
 * <p>In: a stint with its evidence table, the identified car and setup changes. Out: {@link
 * setwright.core.replay.Prediction}: change of balance and time by corner and phase, with intervals from draws of the
 * car's uncertain parameters.
 */
@NullMarked
package setwright.core.replay;

import org.jspecify.annotations.NullMarked;
