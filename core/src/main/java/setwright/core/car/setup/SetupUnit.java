package setwright.core.car.setup;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit that a setup item may be given in. Counts (positions, clicks, steps, turns) are not physical: their value stays as
 * counted.
 *
 * <p><b>Source of factors:</b> NIST Special Publication 811, appendix B (pound-force 4.448 222 N, inch 0.0254 m, psi
 * 6894.757 Pa, pound 0.453 592 37 kg).
 */
public enum SetupUnit {
    NEWTON_PER_MM("N/mm", 1.0e3, "kn/m"),
    NEWTON_PER_M("N/m", 1.0),
    KGF_PER_MM("kgf/mm", 9.80665e3, "kg/mm"),
    LBF_PER_INCH("lbf/in", 4.448222 / 0.0254, "lb/in lbs/in lbin lbs/inch lb/inch"),
    POSITION("position", 1.0, "positions pos hole holes"),
    CLICKS("clicks", 1.0, "click"),
    STEP("step", 1.0, "steps"),
    TURNS("turns", 1.0, "turn rev"),
    MM("mm", 1.0e-3, "millimetre millimetres"),
    CM("cm", 1.0e-2),
    M("m", 1.0, "metre metres"),
    INCH("in", 0.0254, "inch inches"),
    PERCENT("%", 0.01, "percent pct"),
    SHARE("share", 1.0, "0-1 fraction"),
    NM("Nm", 1.0, "n*m n-m"),
    LBF_FT("lbf ft", 4.448222 * 0.3048, "lbft lb-ft ft-lb ftlb lbf-ft ftlbf"),
    BAR("bar", 1.0e5),
    KPA("kPa", 1.0e3),
    PSI("psi", 6894.757),
    DEG("deg", Math.PI / 180.0, "degree degrees °"),
    ARCMIN("arcmin", Math.PI / 10800.0, "minutes '"),
    RATIO("ratio", 1.0, "1 - :1"),
    KG("kg", 1.0),
    LB("lb", 0.45359237, "lbs");

    private final String symbol;
    private final double factor;
    /** All spellings, with a blank on either side of each. */
    private final String spellings;

    SetupUnit(String symbol, double factor) {
        this(symbol, factor, "");
    }

    SetupUnit(String symbol, double factor, String otherSpellings) {
        this.symbol = symbol;
        this.factor = factor;
        this.spellings = " " + plain(symbol) + " " + otherSpellings + " ";
    }

    /** Tells whether it counts something instead of measuring it. */
    public boolean isCount() {
        return this == POSITION || this == CLICKS || this == STEP || this == TURNS;
    }

    /** Returns the unit as written on a sheet. */
    public String symbol() {
        return symbol;
    }

    /** Returns the value in SI units (N/m, m, Nm, Pa, rad, kg, share 0..1), or the count itself. */
    public double toSi(double value) {
        return value * factor;
    }

    /** Returns what stands on a sheet in this unit for a value in SI units. */
    public double fromSi(double value) {
        return value / factor;
    }

    /** Returns the one of these units that a text means, in any letter case and with or without blanks. */
    static Optional<SetupUnit> spelled(String text, List<SetupUnit> among) {
        String wanted = plain(text);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return among.stream()
                .filter(unit -> unit.spellings.contains(" " + wanted + " "))
                .findFirst();
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace(" ", "").replace("·", "*");
    }
}
