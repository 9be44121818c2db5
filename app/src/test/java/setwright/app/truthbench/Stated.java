package setwright.app.truthbench;

/**
 * Something said with a probability, and whether it was so.
 *
 * @param probability  as stated, 0..1
 * @param right        whether it was so
 */
record Stated(double probability, boolean right) {}
