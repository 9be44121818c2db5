package setwright.app.plot;

/**
 * A straight map from values to places on a drawing.
 *
 * @param low    value that is drawn at {@code from}
 * @param high   value that is drawn at {@code to}, different from {@code low}
 * @param from   place of {@code low}
 * @param to     place of {@code high}
 */
public record Scale(double low, double high, double from, double to) {
    public Scale {
        if (!(Math.abs(high - low) > 0.0) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException(
                    "a scale needs two different finite values, got " + low + " and " + high);
        }
    }

    /** Returns the place of a value; beyond the ends the line goes on. */
    public double at(double value) {
        return from + (value - low) / (high - low) * (to - from);
    }

    /** Returns the place of a value, kept between the ends. */
    public double within(double value) {
        return at(Math.max(Math.min(low, high), Math.min(Math.max(low, high), value)));
    }
}
