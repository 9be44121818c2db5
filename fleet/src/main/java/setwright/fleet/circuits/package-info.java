/**
 * One circuit for all recordings made there, so that corner 4 is the same corner in all of them.
 *
 * <p>In: the recordings of a tree. Out: for each circuit the file that it is kept in among the tables: a given one, or what the first recordings
 * show.
 */
@NullMarked
package setwright.fleet.circuits;

import org.jspecify.annotations.NullMarked;
