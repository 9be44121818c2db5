package setwright.intake.mdf;

/**
 * Which of several ranges a number falls into; the first that holds it counts.
 *
 * <p><b>Source:</b> ASAM MDF 4, CCBLOCK, type 6: for integers both ends belong to the range, for floating-point numbers the upper
 * one does not (except, here, where both ends are equal: such a range would be empty).
 */
final class RangeTable implements Conversion {
    private final Ranges ranges;
    private final double[] values;
    private final double otherwise;

    RangeTable(Ranges ranges, double[] values, double otherwise) {
        this.ranges = ranges;
        this.values = values.clone();
        this.otherwise = otherwise;
    }

    @Override
    public double of(double raw) {
        if (Double.isNaN(raw)) {
            return Double.NaN;
        }
        int index = ranges.indexOf(raw);
        return index < 0 ? otherwise : values[index];
    }
}
