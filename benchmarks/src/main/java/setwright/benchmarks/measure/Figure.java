package setwright.benchmarks.measure;

import java.util.Locale;

/** Writes figures in the unit that they are best read in. */
public final class Figure {
    private static final double MEGABYTE = 1.0e6;

    private Figure() {}

    /** Returns a time given in seconds, with three digits. */
    public static String time(double seconds) {
        if (!Double.isFinite(seconds)) {
            return "";
        }
        if (seconds >= 1.0) {
            return digits(seconds) + " s";
        }
        return seconds >= 1.0e-3 ? digits(1.0e3 * seconds) + " ms" : digits(1.0e6 * seconds) + " µs";
    }

    /** Returns a size given in bytes. */
    public static String size(double bytes) {
        return Double.isFinite(bytes) ? Math.round(bytes / MEGABYTE) + " MB" : "";
    }

    /** Returns a ratio with its spread. */
    public static String ratio(Spread ratio) {
        return ratio.known()
                ? "**" + digits(ratio.median()) + "** (" + digits(ratio.least()) + " to " + digits(ratio.most()) + ")"
                : "";
    }

    /** Returns a number with two or three digits, as a person reads it. */
    public static String digits(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        double size = Math.abs(value);
        int decimals = size >= 100.0 ? 0 : size >= 10.0 ? 1 : size >= 0.1 ? 2 : 3;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
