/**
 * How the diagnosis of a file grows with its laps, its rate and its columns.
 *
 * <p>In: files that our own simulation drives. Out: times of reading, of laps with line and corners, and of the diagnosis, as Markdown, CSV
 * and drawings, with straight lines through them.
 */
@NullMarked
package setwright.benchmarks.growth;

import org.jspecify.annotations.NullMarked;
