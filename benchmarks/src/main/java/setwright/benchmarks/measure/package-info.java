/**
 * How is measured: times of a call or of a process, ours and a reference in turn, and what the machine is.
 *
 * <p>In: two things to be done. Out: their times on the clock and of all processors, ratios with their spread, as Markdown. Nothing
 * here knows of laps.
 */
@NullMarked
package setwright.benchmarks.measure;

import org.jspecify.annotations.NullMarked;
