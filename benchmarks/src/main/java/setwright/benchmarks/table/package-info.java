/**
 * The table of ratios: what the program does against what others need for the same or for less.
 *
 * <p>In: files that our own simulation drives. Out: rows of {@link setwright.benchmarks.measure.RatioTable}: import and reading against
 * DuckDB, diagnosis against reading, commands from start to end, replay, laps, and the page's answers.
 */
@NullMarked
package setwright.benchmarks.table;

import org.jspecify.annotations.NullMarked;
