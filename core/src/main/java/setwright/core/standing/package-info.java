/**
 * Standing: where each item of a setup stands in its range, and what that does to the balance on the laps that were driven.
 *
 * <p>In: the car sheet and a {@link setwright.core.replay.Predictor} of its laps. Out: {@link
 * setwright.core.standing.SetupStanding}: for each phase and speed class, how much more the front slips than with every item in
 * the middle of its range, with a spread; and which items make it so.
 */
@NullMarked
package setwright.core.standing;

import org.jspecify.annotations.NullMarked;
