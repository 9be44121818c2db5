package setwright.core.circuit;

/**
 * One crossing of the start line.
 *
 * @param sample  when, in samples from the start of the recording; may lie between samples
 * @param number  the logger's number of the lap that begins, or {@link #UNNUMBERED}
 */
record Crossing(double sample, int number) {
    static final int UNNUMBERED = Integer.MIN_VALUE;
}
