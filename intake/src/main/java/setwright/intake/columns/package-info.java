/**
 * Recordings that were read once, kept as columns on disk.
 *
 * <p>In: a {@link setwright.core.recording.Recording}, calibrated and on one time base. Out: the same one, to the last bit, from a Parquet file that any
 * program can open: one column per quantity in SI units, with what was corrected beside them.
 * Any other table goes the same way through {@link setwright.intake.columns.ParquetTable}.
 */
@NullMarked
package setwright.intake.columns;

import org.jspecify.annotations.NullMarked;
