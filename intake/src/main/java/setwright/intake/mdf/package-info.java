/**
 * Measurement files by the open standard ASAM MDF, versions 4.00 to 4.20, as many loggers and control units write them.
 *
 * <p>In: a file, which is not trusted: each link, length and count is checked against the file before it is used. Out: one
 * {@link setwright.intake.table.Table} for each channel group with a time, converted to the units that the file names; or one
 * problem with the byte where it lies.
 *
 * <p>Sections of the standard are named after its blocks (ID, HD, DG, CG, CN, CC, DT, DL, HL, DZ, LD). What was left out of a
 * table is told in its remarks.
 */
@NullMarked
package setwright.intake.mdf;

import org.jspecify.annotations.NullMarked;
