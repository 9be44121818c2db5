/**
 * Where on the circuit every sample was taken: laps, the reference line, corners.
 *
 * <p>In: a {@link setwright.core.recording.Recording}. Out: a {@link setwright.core.circuit.Stint}, the recording cut into
 * laps with each sample at its station and lateral offset, on a {@link setwright.core.circuit.Circuit} that can be kept
 * and used again so that corner numbers stay the same.
 */
@NullMarked
package setwright.core.circuit;

import org.jspecify.annotations.NullMarked;
