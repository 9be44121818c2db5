/**
 * Baseline: a stint of the same car in good order, to hold later stints of that circuit against.
 *
 * <p>In: the stint, the balance traced in it and the sheet it was driven with. Out: {@link setwright.core.baseline.Baseline}, which
 * gives the passes of another stint a measured reference in place of a reckoned one, and says how well that is known.
 */
@NullMarked
package setwright.core.baseline;

import org.jspecify.annotations.NullMarked;
