/**
 * Where the tables lie: SQLite in a folder, or PostgreSQL.
 *
 * <p>In: the place as people write it. Out: connections to tables that are up to date.
 */
@NullMarked
package setwright.logbook.database;

import org.jspecify.annotations.NullMarked;
