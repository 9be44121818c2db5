/**
 * What a worker does: judges the recordings of a batch one after the other, exactly as the command line would, and writes their rows.
 *
 * <p>In: a {@link setwright.fleet.batch.Batch}. Out: one file per table, and last the ledger's, which makes the batch count. Knows nothing of Spark.
 */
@NullMarked
package setwright.fleet.work;

import org.jspecify.annotations.NullMarked;
