package setwright.core.car.worked;

/**
 * A value that comes out of a sum.
 *
 * @param symbol   letter in the formulas
 * @param words    what it is
 * @param value    in its unit, finite
 * @param unit     as the user reads it
 * @param formula  how to work it out in these units: ASCII, each letter in braces, as in <code>{k_s} * {MR}^2</code>; with an equals
 *                 sign it is an equation that the value solves
 */
public record Result(String symbol, String words, double value, Unit unit, String formula) implements Quantity {
    public Result {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(words + " cannot be worked out from these values");
        }
    }

    /** Tells whether the formula is an equation that the value solves. */
    public boolean solvesEquation() {
        return formula.contains(" = ");
    }
}
