/**
 * Setup sweeps: one or two setup items turned over their range, a quasi-steady lap for each setting.
 *
 * <p>In: a car sheet with values for its uncertain parameters, a circuit, and the values of the items. Out: a {@link
 * setwright.core.simulation.sweep.SetupSweep}: lap time, lowest speeds and balance per setup. Items that such a lap cannot see
 * (dampers) are named by {@link setwright.core.simulation.sweep.Unseen}.
 */
@NullMarked
package setwright.core.simulation.sweep;

import org.jspecify.annotations.NullMarked;
