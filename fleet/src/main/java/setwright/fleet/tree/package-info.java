/**
 * A tree of recordings: what is in it, and what goes with what.
 *
 * <p>In: a depot with recordings, car sheets, channel maps and circuits. Out: {@link setwright.fleet.tree.Recorded}, one for each recording,
 * sorted by path, with its labels from folders named {@code key=value} and the nearest companions.
 */
@NullMarked
package setwright.fleet.tree;

import org.jspecify.annotations.NullMarked;
