/**
 * From a diagnosis to what a coach works on: where the time lies, which event moves, what it costs.
 *
 * <p>In: a {@link setwright.core.judgement.Diagnosis}. Out: a {@link setwright.core.judgement.driving.DrivingReview} with, for
 * each corner, what could be told there and what the laps show, and the places to begin with. A cost that the laps do not show
 * is not given.
 */
@NullMarked
package setwright.core.judgement.driving;

import org.jspecify.annotations.NullMarked;
