/**
 * Measures what Spark costs beside the judgement itself, on recordings that are made up for it.
 *
 * <p>In: how many recordings. Out: a tree of them, some broken on purpose, and the ratio of two times ({@link setwright.fleet.measure.FleetBench}). Not part
 * of what the command line offers.
 */
@NullMarked
package setwright.fleet.measure;

import org.jspecify.annotations.NullMarked;
