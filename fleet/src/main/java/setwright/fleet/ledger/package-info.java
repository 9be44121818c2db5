/**
 * What was done: a table with one row per recording, which is also the mark that its batch is finished.
 *
 * <p>In: the folder of the tables. Out: what came of each recording so far, with everything unfinished swept away. How the folder is laid
 * out stands in {@link setwright.fleet.ledger.OutLayout}.
 */
@NullMarked
package setwright.fleet.ledger;

import org.jspecify.annotations.NullMarked;
