/**
 * The invented world: cars with what their users know and what is true of them, circuits, a series with its rules, and the files
 * that a drive in it leaves.
 *
 * <p>In: the program's own resources under {@code world/}, a table that a logger recorded. Out: {@link
 * setwright.app.world.World}, a recording as CSV, a car sheet with changed values. To add a car or a circuit, see docs/world.md.
 */
@NullMarked
package setwright.app.world;

import org.jspecify.annotations.NullMarked;
