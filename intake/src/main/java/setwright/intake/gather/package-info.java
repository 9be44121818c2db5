/**
 * One table of all that was recorded of one run: the groups of a file that were sampled at different rates, and files of other devices.
 *
 * <p>In: {@link setwright.intake.gather.RecordingFiles}. Out: one {@link setwright.intake.table.Table} on the times of the quickest, and what was
 * done for it. Clocks that differ are brought together by the motion that both devices saw; where that is not certain, the files are refused.
 */
@NullMarked
package setwright.intake.gather;

import org.jspecify.annotations.NullMarked;
