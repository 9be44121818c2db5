/**
 * Back to back: did a change of the setup do what it was to do?
 *
 * <p>In: {@link setwright.core.judgement.Diagnosis}es of runs with one setup and with another, in the order in which they were driven. {@link
 * setwright.core.trial.TrialRuns} takes from them what is compared, lap by lap; {@link setwright.core.trial.TrialModel} estimates the
 * change with a mixed model whose runs are random; {@link setwright.core.trial.TrialJudge} says what to do. Out: {@link
 * setwright.core.trial.Trial}.
 */
@NullMarked
package setwright.core.trial;

import org.jspecify.annotations.NullMarked;
