/**
 * What the answer rests on, drawn together for showing.
 *
 * <p>In: a {@link setwright.core.judgement.Diagnosis}. Out: balance by corner and phase with its interval, events lap by lap, traces
 * over distance. Shared by the text, the JSON and the report, so that all three say the same.
 */
@NullMarked
package setwright.app.evidence;

import org.jspecify.annotations.NullMarked;
