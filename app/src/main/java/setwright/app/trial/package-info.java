/**
 * A change that was tried: runs with and without it, from their files to a verdict.
 *
 * <p>In: recordings in the order in which they were driven, and their car sheets. Out: {@link setwright.app.trial.TrialAnswer}. What changed is
 * read from the sheets; the judgement is {@link setwright.core.trial.TrialJudge}'s.
 */
@NullMarked
package setwright.app.trial;

import org.jspecify.annotations.NullMarked;
