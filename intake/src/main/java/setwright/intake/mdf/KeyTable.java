package setwright.intake.mdf;

import java.util.Arrays;

/**
 * Pairs of key and value; outside of the keys the outermost values hold.
 *
 * <p><b>Source:</b> ASAM MDF 4, CCBLOCK, types 4 (with interpolation) and 5 (without: the value of the nearer key, of the lower
 * one half-way).
 */
final class KeyTable implements Conversion {
    private final double[] keys;
    private final double[] values;
    private final boolean interpolates;

    /**
     * Makes a table.
     *
     * @param keys    rising, at least one
     * @param values  one for each key
     */
    KeyTable(double[] keys, double[] values, boolean interpolates) {
        this.keys = keys.clone();
        this.values = values.clone();
        this.interpolates = interpolates;
    }

    @Override
    public double of(double raw) {
        if (Double.isNaN(raw)) {
            return Double.NaN;
        }
        int found = Arrays.binarySearch(keys, raw + 0.0);
        if (found >= 0) {
            return values[found];
        }
        int above = -found - 1;
        if (above == 0) {
            return values[0];
        }
        if (above == keys.length) {
            return values[keys.length - 1];
        }
        double before = raw - keys[above - 1];
        double after = keys[above] - raw;
        if (interpolates) {
            return values[above - 1] + (values[above] - values[above - 1]) * (before / (before + after));
        }
        return before > after ? values[above] : values[above - 1];
    }
}
