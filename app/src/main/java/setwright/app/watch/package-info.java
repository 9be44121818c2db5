/**
 * A folder into which a logger puts its files, watched while the driver is on the circuit.
 *
 * <p>In: a folder. Out: each new file, once it is complete.
 */
@NullMarked
package setwright.app.watch;

import org.jspecify.annotations.NullMarked;
