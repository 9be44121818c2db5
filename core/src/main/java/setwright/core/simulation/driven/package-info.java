/**
 * What a simulated drive leaves behind: every signal, without noise, at equal steps of time.
 *
 * <p>In: the steps of a transient simulation. Out: {@link setwright.core.simulation.driven.DriveHistory}, which a logger turns into
 * a recording and a judge of the truth reads directly. To add a signal, add a constant to {@link
 * setwright.core.simulation.driven.Signal} and write it where the step is recorded.
 */
@NullMarked
package setwright.core.simulation.driven;

import org.jspecify.annotations.NullMarked;
