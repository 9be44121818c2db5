/**
 * The use case: from a recording's file to an answer.
 *
 * <p>In: paths of recording, car sheet, channel map and circuit. Out: an {@link setwright.app.evidence.Answer}.
 */
@NullMarked
package setwright.app.diagnose;

import org.jspecify.annotations.NullMarked;
