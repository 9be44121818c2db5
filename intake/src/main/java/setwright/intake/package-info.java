/**
 * From a file to a {@link setwright.core.recording.Recording}: the way in for everything measured.
 *
 * <p>In: a table on disk, optionally a channel map and a car sheet. Out: {@link setwright.intake.Intake}, the recording with
 * the map that was used and a remark for everything understood, corrected or left out.
 */
@NullMarked
package setwright.intake;

import org.jspecify.annotations.NullMarked;
