/**
 * How far an answer holds when the recording or the sheet is worse than it should be.
 *
 * <p>In: stints of the invented world, each driven once and logged in several ways. Out: tests, and a table of what was answered.
 */
@NullMarked
package setwright.app.robustness;

import org.jspecify.annotations.NullMarked;
