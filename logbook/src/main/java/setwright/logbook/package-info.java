/**
 * What people write and decide: cars, setups, stints, findings, proposals, trials, verdicts and notes.
 *
 * <p>In: rows of {@link setwright.logbook.row}, written in transactions. Out: the same rows, in this process and any other, now and after a
 * crash. Kept in a folder with a SQLite database, or in PostgreSQL for a team; recordings lie beside it as files. Nothing here knows the physics.
 */
@NullMarked
package setwright.logbook;

import org.jspecify.annotations.NullMarked;
