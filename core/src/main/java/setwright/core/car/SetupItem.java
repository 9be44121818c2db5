package setwright.core.car;

/**
 * One adjustable item of a setup, in the sheet's own unit (the unit people turn and read).
 *
 * @param name   as on the sheet, such as {@code front_bar}
 * @param value  now
 * @param unit   as on the sheet
 * @param min    least allowed value
 * @param max    greatest allowed value, at least {@code min}
 * @param step   smallest change, &gt; 0
 */
public record SetupItem(String name, double value, String unit, double min, double max, double step) {
    public SetupItem {
        if (!(min <= max && step > 0.0 && Double.isFinite(value))) {
            throw new IllegalArgumentException("setup item " + name + " needs min <= max and step > 0, got value "
                    + value + ", min " + min + ", max " + max + ", step " + step);
        }
    }

    /** Returns the middle of the allowed range. */
    public double middle() {
        return 0.5 * (min + max);
    }

    /** Returns where the value lies in its range: -0.5 at its least, 0.5 at its greatest, 0 when there is no choice. */
    public double place() {
        double range = max - min;
        return range > 0.0 ? (value - middle()) / range : 0.0;
    }
}
