/**
 * From the evidence table to answers: is the driving repeatable, what is wrong, what sets it off, what does it cost.
 *
 * <p>In: the {@link setwright.core.handling.CornerPass} table and the car sheet. Out: a {@link
 * setwright.core.judgement.Diagnosis} with {@link setwright.core.judgement.Repeatability}, ranked {@link
 * setwright.core.judgement.Finding}s and a {@link setwright.core.judgement.Verdict}, each with its probability. A problem
 * below its noise is not a finding.
 */
@NullMarked
package setwright.core.judgement;

import org.jspecify.annotations.NullMarked;
