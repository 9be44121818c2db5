package setwright.core.car.figures;

/**
 * A usual value used because the sheet does not give it.
 *
 * @param key    of the sheet
 * @param value  in the unit of the key
 * @param unit   as shown; empty for a pure number
 */
public record Assumption(String key, double value, String unit) {}
