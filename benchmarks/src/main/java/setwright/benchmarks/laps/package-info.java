/**
 * The recordings that are measured: the packaged practice one, and files of any length, rate and width that our own simulation drives.
 *
 * <p>In: the packaged practice recording with its car sheet. Out: a stint of ten laps; CSV files.
 */
@NullMarked
package setwright.benchmarks.laps;

import org.jspecify.annotations.NullMarked;
