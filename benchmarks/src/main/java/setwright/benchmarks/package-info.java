/**
 * How long the core takes on a stint of ten laps.
 *
 * <p>In: a packaged practice recording with its car sheet. Out: a table of times on standard output, and a profile of the
 * replay where it is asked for. Not part of the program.
 */
@NullMarked
package setwright.benchmarks;

import org.jspecify.annotations.NullMarked;
