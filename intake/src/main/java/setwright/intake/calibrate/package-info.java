/**
 * Zero offsets, biases, scales and time lags, measured from the recording itself and taken out.
 *
 * <p>In: channels in SI units on one time base. Out: the corrected channels and a {@link setwright.core.recording.Calibration} for each correction.
 */
@NullMarked
package setwright.intake.calibrate;

import org.jspecify.annotations.NullMarked;
