/**
 * Many recordings: the same judgement as for one, spread over cores and machines by Apache Spark, with tables that any SQL engine reads.
 *
 * <p>In: a tree of recordings. Out: partitioned tables with a ledger, and answers to what a school asks. {@link setwright.fleet.SparkFleet} is what the
 * command line finds; {@link setwright.fleet.Run} is the road from tree to tables.
 */
@NullMarked
package setwright.fleet;

import org.jspecify.annotations.NullMarked;
