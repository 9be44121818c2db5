/**
 * The answer for programs.
 *
 * <p>In: an {@link setwright.app.evidence.Answer}. Out: JSON of the shape in docs/diagnose.schema.json, version 1; or
 * {@link setwright.core.car.worked.Calculation}s, out: the JSON of {@code sums}.
 */
@NullMarked
package setwright.app.json;

import org.jspecify.annotations.NullMarked;
