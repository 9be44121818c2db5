package setwright.core.car.setup;

import java.util.List;
import java.util.Optional;
import setwright.core.car.SetupItem;

/**
 * One adjustable item that Setwright knows.
 *
 * @param name    on the sheet, such as {@code front_bar}
 * @param words   for people, such as "front bar"
 * @param place   axle it acts on
 * @param family  what it is
 * @param gear    number of the gear; 0 where the item is none
 */
public record SetupItemKind(String name, String words, SetupPlace place, SetupFamily family, int gear) {

    /** Returns the accepted units, the usual one first; empty for a word such as a compound. */
    public List<SetupUnit> units() {
        return family.units();
    }

    /** Returns the usual unit; empty for a word. */
    public Optional<SetupUnit> usualUnit() {
        return units().stream().findFirst();
    }

    /** Returns the accepted unit that a text means. */
    public Optional<SetupUnit> unit(String text) {
        return SetupUnit.spelled(text, units());
    }

    /** Returns the range of what is possible, in that unit. */
    public SetupFamily.Range possible(SetupUnit unit) {
        return in(unit, family.possible());
    }

    /** Returns the range of common practice, in that unit. */
    public SetupFamily.Range usual(SetupUnit unit) {
        return in(unit, family.usual());
    }

    /** Returns the step of common practice, in that unit. */
    public double usualStep(SetupUnit unit) {
        return in(unit, family.usualStep());
    }

    /**
     * Returns a value of this item in SI units (N/m, m, Nm, Pa, rad, kg, share 0..1, ratio); counts (positions, clicks,
     * steps, turns, and wings in any unit) stay as counted.
     *
     * @param item   gives the unit
     * @param value  in that unit
     * @throws IllegalArgumentException when the unit is not one of this item's
     */
    public double toSi(SetupItem item, double value) {
        SetupUnit unit = unit(item.unit())
                .orElseThrow(() -> new IllegalArgumentException("\"" + item.unit() + "\" is no unit of " + name));
        return isCounted() ? value : unit.toSi(value);
    }

    /** Returns the item's value now, as {@link #toSi(SetupItem, double)}. */
    public double toSi(SetupItem item) {
        return toSi(item, item.value());
    }

    /** Tells whether values are counted rather than measured. */
    public boolean isCounted() {
        return usualUnit().map(SetupUnit::isCount).orElse(false);
    }

    private SetupFamily.Range in(SetupUnit unit, SetupFamily.Range range) {
        return new SetupFamily.Range(in(unit, range.least()), in(unit, range.most()));
    }

    private double in(SetupUnit unit, double value) {
        SetupUnit first = usualUnit().orElse(unit);
        // conversion and back may leave a last digit that nobody wants to read
        return isCounted() || unit == first ? value : rounded(unit.fromSi(first.toSi(value)));
    }

    private static double rounded(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(3))
                .doubleValue();
    }
}
