/**
 * Tables of numbers, whatever kind of file they stood in, and what a kind of file has to offer to be one.
 *
 * <p>In: what the readers of text, Parquet and measurement files found. Out: {@link setwright.intake.table.Table}, columns of numbers with header and
 * unit as written.
 */
@NullMarked
package setwright.intake.table;

import org.jspecify.annotations.NullMarked;
