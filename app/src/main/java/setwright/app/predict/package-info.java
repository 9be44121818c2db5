/**
 * The use case: what a change of setup would do on the laps that were driven.
 *
 * <p>In: an {@link setwright.app.evidence.Answer} and changes in the user's words. Out: a {@link
 * setwright.app.predict.PredictionAnswer} with one prediction for each candidate.
 */
@NullMarked
package setwright.app.predict;

import org.jspecify.annotations.NullMarked;
