package setwright.core.car.worked;

/** A number with a name, a letter and a unit. */
public sealed interface Quantity permits Input, Result {
    /** Returns the letter in formulas, such as {@code k_w}; alike ones are numbered, {@code i_1}, {@code i_2}. */
    String symbol();

    /** Returns what it is. */
    String words();

    /** Returns the value in {@link #unit()}. */
    double value();

    /** Returns the unit that the value is in. */
    Unit unit();

    /** Returns the value in SI units. */
    default double si() {
        return unit().si(value());
    }
}
