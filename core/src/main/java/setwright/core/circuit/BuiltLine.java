package setwright.core.circuit;

/**
 * A reference line and how good it is.
 *
 * @param line     station 0 at the start line
 * @param quality  its figures
 */
record BuiltLine(ReferenceLine line, LineQuality quality) {}
