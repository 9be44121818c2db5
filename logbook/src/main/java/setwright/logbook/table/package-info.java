/**
 * The statements, one interface per table.
 *
 * <p>In and out: rows of {@link setwright.logbook.row}. Statements are common to SQLite and PostgreSQL; what is not (free text) has one for each.
 */
@NullMarked
package setwright.logbook.table;

import org.jspecify.annotations.NullMarked;
