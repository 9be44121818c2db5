/**
 * Explanation: why a diagnosis says what it says, as a short chain of reasons with their figures.
 *
 * <p>In: a {@link setwright.core.judgement.Diagnosis}. Out: for each finding an {@link
 * setwright.core.explanation.Explanation} (laps, corners, input, axle, setup, how sure, what else it could be), and for the
 * verdict what was looked at, the most that was seen and what would settle it.
 */
@NullMarked
package setwright.core.explanation;

import org.jspecify.annotations.NullMarked;
