/**
 * Tables in Parquet files.
 *
 * <p>In: a file that any program wrote. Out: {@link setwright.intake.table.Table}, with moments as seconds and truths as 0 and 1.
 */
@NullMarked
package setwright.intake.parquet;

import org.jspecify.annotations.NullMarked;
