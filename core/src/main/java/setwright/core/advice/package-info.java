/**
 * Advice from evidence other than balance: the engine's limiter, locked wheels, suspension travel, tyre temperatures, and what drifts
 * over the stint.
 *
 * <p>In: a diagnosis and the car sheet. Out: advice where the channels are there and something shows, each with its laps and places;
 * and what was looked at without one, with the reason.
 */
@NullMarked
package setwright.core.advice;

import org.jspecify.annotations.NullMarked;
