/**
 * Tables of numbers from text files, whatever their dialect: delimiter, decimal mark, encoding, units, compression.
 *
 * <p>In: a file. Out: {@link setwright.intake.table.Table}, columns of numbers with header and unit as written, or a problem with its place.
 */
@NullMarked
package setwright.intake.csv;

import org.jspecify.annotations.NullMarked;
