/**
 * What a logger recorded, in one shape whatever the file was.
 *
 * <p>In: channels already converted to SI units, ISO 8855 signs and one uniform time base. Out: {@link
 * setwright.core.recording.Recording}, which every later stage reads and none changes. Gaps in the data are NaN, and
 * every correction made on the way in is kept as a {@link setwright.core.recording.Calibration} with its reason.
 */
@NullMarked
package setwright.core.recording;

import org.jspecify.annotations.NullMarked;
