/**
 * Numbers that are too many for memory.
 *
 * <p>In: blocks of rows, as they are read. Out: {@link setwright.intake.table.Numbers}, kept in a temporary file that nobody else sees and
 * that goes with the program.
 */
@NullMarked
package setwright.intake.spill;

import org.jspecify.annotations.NullMarked;
