package setwright.core.simulation.logger;

import setwright.core.recording.Quantity;

/**
 * A unit that a logger writes a column in.
 *
 * <p><b>Source of factors:</b> BIPM, <i>The International System of Units</i>, 9th ed. 2019 (g_n = 9.806 65 m/s²); NIST Special
 * Publication 811, appendix B (mile 1609.344 m).
 */
public enum LoggedUnit {
    SECOND("s", 1.0, 3),
    METRE_PER_SECOND("m/s", 1.0, 2),
    KILOMETRE_PER_HOUR("km/h", 1.0 / 3.6, 1),
    MILE_PER_HOUR("mph", 1609.344 / 3600.0, 1),
    RADIAN("rad", 1.0, 3),
    DEGREE("deg", Math.PI / 180.0, 1),
    /** Latitude and longitude: 1e-7 deg is a centimetre. */
    FINE_DEGREE("deg", Math.PI / 180.0, 7),
    RADIAN_PER_SECOND("rad/s", 1.0, 4),
    DEGREE_PER_SECOND("deg/s", Math.PI / 180.0, 2),
    METRE_PER_SECOND_SQUARED("m/s2", 1.0, 2),
    STANDARD_GRAVITY("g", 9.80665, 3),
    SHARE("0-1", 1.0, 3),
    PERCENT("%", 0.01, 1),
    BAR("bar", 1.0e5, 1),
    RPM("rpm", Math.PI / 30.0, 0),
    METRE("m", 1.0, 2),
    MILLIMETRE("mm", 1.0e-3, 1),
    KILOGRAM("kg", 1.0, 2),
    COUNT("", 1.0, 0);

    private final String symbol;
    private final double factor;
    private final int decimals;

    LoggedUnit(String symbol, double factor, int decimals) {
        this.symbol = symbol;
        this.factor = factor;
        this.decimals = decimals;
    }

    /** Returns the unit as written in a header; empty for a count. */
    public String symbol() {
        return symbol;
    }

    /** Returns a value in this unit for one in SI units. */
    public double fromSi(double value) {
        return value / factor;
    }

    /** Returns how many SI units one of this unit is. */
    public double factor() {
        return factor;
    }

    /** Returns how many decimals a logger usually keeps of a quantity. */
    public int decimals(Quantity quantity) {
        // suspension travel in metres would lose everything at centimetres
        boolean travel = this == METRE && quantity.name().startsWith("SUSPENSION");
        return travel ? 4 : decimals;
    }
}
