package setwright.core.car.worked;

/**
 * A value that goes into a sum.
 *
 * @param symbol  letter in the formulas
 * @param words   what it is
 * @param value   in its unit, finite
 * @param unit    as the user reads it
 * @param origin  where it comes from
 */
public record Input(String symbol, String words, double value, Unit unit, Origin origin) implements Quantity {
    public Input {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(words + " must be a number, got " + value);
        }
    }
}
