package setwright.intake.map;

/**
 * A unit of measurement: SI value = {@code factor * value + zero}.
 *
 * @param symbol     as written in a channel map
 * @param dimension  what it measures
 * @param factor     SI units per unit
 * @param zero       SI value of the reading 0, other than 0 only for temperatures
 */
public record Unit(String symbol, Dimension dimension, double factor, double zero) {
    /** Returns the SI value of a reading. */
    public double toSi(double reading) {
        return factor * reading + zero;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
