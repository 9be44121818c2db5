/**
 * What a school asks of all its recordings.
 *
 * <p>In: the tables of a run. Out: a {@link setwright.fleet.summary.Summary}: which problems and faults, in which corners, which drivers have more of them
 * than is usual, which changes helped; each with its counts and an interval, or that there are too few. Spark counts, plain functions judge.
 */
@NullMarked
package setwright.fleet.summary;

import org.jspecify.annotations.NullMarked;
