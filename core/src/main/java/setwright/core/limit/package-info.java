/**
 * Quasi-steady laps: how fast a car gets round a given line when it is always at a limit of tyres or engine.
 *
 * <p>In: a car, or any other {@link setwright.core.limit.GripEnvelope}, and the curvature of a closed line. Out: a {@link
 * setwright.core.limit.QuasiSteadyLap} with speed, balance and what limits at each station. Knows nothing of
 * dampers, transients and drivers.
 */
@NullMarked
package setwright.core.limit;

import org.jspecify.annotations.NullMarked;
