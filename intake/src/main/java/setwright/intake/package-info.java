/**
 * From files to what the core understands.
 *
 * <p>In: recordings and car sheets as their users have them, in any unit and layout. Out: a recording on one uniform time
 * base in SI units, a car sheet, and what was understood, calibrated or refused, in which file, row and column.
 */
@NullMarked
package setwright.intake;

import org.jspecify.annotations.NullMarked;
