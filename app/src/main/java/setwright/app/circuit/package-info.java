/**
 * Circuits kept in a file, so that every recording made there has the same corner numbers.
 *
 * <p>In: a {@link setwright.core.circuit.Circuit}, or a file written before. Out: the one from the other; a file that is
 * none of ours is refused with a reason.
 */
@NullMarked
package setwright.app.circuit;

import org.jspecify.annotations.NullMarked;
