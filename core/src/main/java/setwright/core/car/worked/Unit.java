package setwright.core.car.worked;

import setwright.core.car.sums.Gravity;

/** Units that sums are read in. {@code SI value = shown value * factor + offset}. */
public enum Unit {
    NONE("", 1.0, 3),
    RATIO("", 1.0, 3),
    COUNT("laps", 1.0, 0),
    PERCENT("%", 0.01, 1),
    MASS("kg", 1.0, 1),
    LITRE("l", 1.0e-3, 1),
    KG_PER_LITRE("kg/l", 1.0e3, 3),
    KG_PER_CUBIC_METRE("kg/m3", 1.0, 4),
    METRE("m", 1.0, 4),
    MILLIMETRE("mm", 1.0e-3, 1),
    SQUARE_METRE("m2", 1.0, 3),
    NEWTON("N", 1.0, 0),
    TORQUE("N m", 1.0, 0),
    N_PER_MM("N/mm", 1.0e3, 1),
    NM_PER_DEG("N m/deg", 180.0 / Math.PI, 0),
    DAMPING("N s/m", 1.0, 0),
    HERTZ("Hz", 1.0, 2),
    DEGREE("deg", Math.PI / 180.0, 2),
    RPM("rpm", Math.PI / 30.0, 0),
    KMH("km/h", 1.0 / 3.6, 1),
    G("g", Gravity.STANDARD_MPS2, 3),
    KILOWATT("kW", 1.0e3, 1),
    BAR("bar", 1.0e5, 3),
    HECTOPASCAL("hPa", 100.0, 1),
    CELSIUS("C", 1.0, 1, 273.15),
    MINUTE("min", 60.0, 1),
    SECOND("s", 1.0, 2);

    private final String symbol;
    private final double factor;
    private final int decimals;
    private final double offset;

    Unit(String symbol, double factor, int decimals) {
        this(symbol, factor, decimals, 0.0);
    }

    Unit(String symbol, double factor, int decimals, double offset) {
        this.symbol = symbol;
        this.factor = factor;
        this.decimals = decimals;
        this.offset = offset;
    }

    /** Returns the unit as written behind a figure; empty for plain numbers. */
    public String symbol() {
        return symbol;
    }

    /** Returns how many decimals a result in this unit deserves. */
    public int decimals() {
        return decimals;
    }

    /** Returns a value of this unit in SI units. */
    public double si(double shown) {
        return shown * factor + offset;
    }

    /** Returns a value in SI units in this unit. */
    public double shown(double si) {
        return (si - offset) / factor;
    }
}
