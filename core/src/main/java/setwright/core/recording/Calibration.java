package setwright.core.recording;

/**
 * One correction that was computed from the data and applied, for people to read.
 *
 * @param what    what was corrected, such as {@code steering zero}
 * @param value   size of the correction, in {@code unit}; what was subtracted, or the factor applied
 * @param unit    the unit of {@code value} as shown to people, such as {@code deg}
 * @param reason  how the data showed it, in one sentence with its figures
 */
public record Calibration(String what, double value, String unit, String reason) {}
