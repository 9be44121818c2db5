/**
 * The use case: quasi-steady laps over one or two setup items.
 *
 * <p>In: a car sheet, a circuit, perhaps laps driven there. Out: a {@link setwright.app.sweep.SweepAnswer}.
 */
@NullMarked
package setwright.app.sweep;

import org.jspecify.annotations.NullMarked;
