/**
 * The command that measures, and what a person waits for: ten laps, a lap simulated, a second driven, a full logbook.
 *
 * <p>In: a packaged practice recording with its car sheet. Out: tables on standard output. Not part of the program.
 */
@NullMarked
package setwright.benchmarks;

import org.jspecify.annotations.NullMarked;
