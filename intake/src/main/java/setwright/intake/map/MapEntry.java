package setwright.intake.map;

/**
 * How one column becomes one quantity: {@code SI value = sign * (reading - offset)} in the unit, converted to SI.
 *
 * @param column  header of the column
 * @param unit    of the readings
 * @param sign    +1, or -1 when the column counts the other way round than ISO 8855 does
 * @param offset  the reading that means zero, in {@code unit}; 0 unless known
 */
public record MapEntry(String column, Unit unit, int sign, double offset) {
    public MapEntry {
        if (sign != 1 && sign != -1) {
            throw new IllegalArgumentException("sign must be 1 or -1, got " + sign);
        }
    }

    /** Returns the SI value of a reading. */
    public double toSi(double reading) {
        return unit.toSi(sign * (reading - offset));
    }
}
