/**
 * Tables for other programs: laps, corner passes, findings, proposals, trials, channels, circuit.
 *
 * <p>In: judged laps, what is proposed, what was tried ({@link setwright.app.export.Material}). Out: CSV, Parquet or JSON. One
 * class defines a table, its columns with unit, kind and words; all forms and docs/export.md come from that definition. To add a
 * table, write its class and add a line in {@link setwright.app.export.ExportTables}.
 */
@NullMarked
package setwright.app.export;

import org.jspecify.annotations.NullMarked;
