/**
 * Cuts what is to be judged into pieces of work.
 *
 * <p>In: recordings. Out: {@link setwright.fleet.batch.Batch}es, each of one circuit, bounded in number and bytes, the biggest first. A batch is one
 * task and one file per table.
 */
@NullMarked
package setwright.fleet.batch;

import org.jspecify.annotations.NullMarked;
