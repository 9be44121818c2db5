package setwright.intake.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import setwright.core.recording.Quantity;

/**
 * The units that headers and channel maps may name, with the spellings they come in.
 *
 * <p><b>Source of factors:</b> BIPM, <i>The International System of Units</i>, 9th ed. 2019 (g_n = 9.806 65 m/s2 exactly, knot
 * 1852 m/h); NIST Special Publication 811, appendix B (mile 1609.344 m, inch 0.0254 m, pound 0.453 592 37 kg, psi
 * 6894.757 Pa, pound-force foot 1.355 818 N m).
 */
public final class Units {
    /** Standard acceleration of free fall, m/s2. */
    public static final double STANDARD_GRAVITY = 9.80665;
    /** Petrol, kg per litre; common practice (0.72 to 0.775 in EN 228). */
    private static final double FUEL_KG_PER_LITRE = 0.745;

    private static final double POUND_FORCE_FOOT_NM = 1.355818;
    private static final double MILE_M = 1609.344;
    private static final double FOOT_M = 0.3048;
    private static final double US_GALLON_LITRES = 3.785411784;
    private static final Pattern COUNTS = Pattern.compile("0-[1-9]\\d{0,8}");
    private static final List<Unit> ALL = new ArrayList<>();
    /** Spelling, without blanks and in lower case, to the units it may mean. */
    private static final Map<String, List<Unit>> BY_SPELLING = new LinkedHashMap<>();

    static {
        add(Dimension.TIME, "s", 1.0, "s sec secs second seconds");
        add(Dimension.TIME, "ms", 1.0e-3, "ms msec millis millisecond milliseconds");
        add(Dimension.TIME, "us", 1.0e-6, "us µs usec micros microseconds");
        add(Dimension.TIME, "min", 60.0, "min minute minutes");
        add(Dimension.SPEED, "m/s", 1.0, "m/s mps ms ms-1 m/sec msec mpers m*s-1");
        add(Dimension.SPEED, "km/h", 1.0 / 3.6, "km/h kmh kph kmph km/hr kmperh kmh-1");
        add(Dimension.SPEED, "mph", MILE_M / 3600.0, "mph mi/h mileh mileperhour");
        add(Dimension.SPEED, "kn", 1852.0 / 3600.0, "kn kt kts knot knots");
        add(Dimension.SPEED, "ft/s", FOOT_M, "ft/s fps ftps");
        add(Dimension.ANGLE, "rad", 1.0, "rad rads radian radians");
        add(Dimension.ANGLE, "deg", Math.PI / 180.0, "deg degs degree degrees ° º");
        add(Dimension.ANGLE, "rev", 2.0 * Math.PI, "rev revs turn turns");
        add(Dimension.ANGULAR_RATE, "rad/s", 1.0, "rad/s rads radps radpersec rad/sec radsec rads-1 radianspersecond");
        add(
                Dimension.ANGULAR_RATE,
                "deg/s",
                Math.PI / 180.0,
                "deg/s degs degps dps °/s º/s deg/sec degsec degpersec degreespersecond");
        add(Dimension.ANGULAR_RATE, "rpm", Math.PI / 30.0, "rpm r/min rev/min revmin min-1 1/min revsperminute u/min");
        add(Dimension.ANGULAR_RATE, "rev/s", 2.0 * Math.PI, "rev/s revs revps rps hz 1/s");
        add(
                Dimension.ACCELERATION,
                "m/s2",
                1.0,
                "m/s2 m/s^2 m/s² ms2 mss mps2 mpss m/s/s m/sec2 m/sec^2 ms-2 m*s-2 m/ss");
        add(Dimension.ACCELERATION, "g", STANDARD_GRAVITY, "g gs gn g0 gee");
        add(Dimension.ACCELERATION, "mg", 1.0e-3 * STANDARD_GRAVITY, "mg");
        add(Dimension.ACCELERATION, "ft/s2", FOOT_M, "ft/s2 ft/s^2 fps2");
        add(Dimension.LENGTH, "m", 1.0, "m metre metres meter meters mtr");
        add(Dimension.LENGTH, "mm", 1.0e-3, "mm millimetre millimetres millimeter millimeters");
        add(Dimension.LENGTH, "cm", 1.0e-2, "cm centimetre centimetres");
        add(Dimension.LENGTH, "km", 1000.0, "km kilometre kilometres kilometer kilometers");
        add(Dimension.LENGTH, "mi", MILE_M, "mi mile miles");
        add(Dimension.LENGTH, "ft", FOOT_M, "ft foot feet");
        add(Dimension.LENGTH, "in", 0.0254, "in inch inches \"");
        add(Dimension.SHARE, "0-1", 1.0, "01 0-1 0..1 1 - share ratio frac fraction unit norm normalised normalized");
        add(Dimension.SHARE, "%", 0.01, "% pct percent pc perc prozent 0-100 0..100");
        add(Dimension.PRESSURE, "Pa", 1.0, "pa pascal");
        add(Dimension.PRESSURE, "kPa", 1.0e3, "kpa kpag kpaa");
        add(Dimension.PRESSURE, "MPa", 1.0e6, "mpa");
        add(Dimension.PRESSURE, "bar", 1.0e5, "bar bars barg bara");
        add(Dimension.PRESSURE, "mbar", 1.0e2, "mbar hpa");
        add(Dimension.PRESSURE, "psi", 6894.757, "psi psig psia lbf/in2");
        ALL.add(remember(new Unit("K", Dimension.TEMPERATURE, 1.0, 0.0), "k kelvin"));
        ALL.add(remember(new Unit("degC", Dimension.TEMPERATURE, 1.0, 273.15), "degc c °c ºc celsius deg centigrade"));
        ALL.add(remember(
                new Unit("degF", Dimension.TEMPERATURE, 5.0 / 9.0, 273.15 - 32.0 * 5.0 / 9.0),
                "degf f °f ºf fahrenheit"));
        add(Dimension.MASS, "kg", 1.0, "kg kilogram kilograms");
        add(Dimension.MASS, "g", 1.0e-3, "g gram grams");
        add(Dimension.MASS, "lb", 0.45359237, "lb lbs pound pounds");
        add(Dimension.MASS, "l", FUEL_KG_PER_LITRE, "l ltr litre litres liter liters");
        add(Dimension.MASS, "gal", FUEL_KG_PER_LITRE * US_GALLON_LITRES, "gal gallon gallons");
        add(Dimension.TORQUE, "N m", 1.0, "nm n*m newtonmetre newtonmetres newtonmeter newtonmeters");
        add(Dimension.TORQUE, "lbf ft", POUND_FORCE_FOOT_NM, "lbfft lbf*ft ftlbf ft*lbf ftlb lbft lb-ft ft-lb");
        add(Dimension.TORQUE, "lbf in", POUND_FORCE_FOOT_NM / 12.0, "lbfin lbf*in inlbf inlb lbin lb-in in-lb");
        add(Dimension.NUMBER, "1", 1.0, "1 - no count number # bool flag 0/1 01 0-1");
    }

    private Units() {}

    private static void add(Dimension dimension, String symbol, double factor, String spellings) {
        ALL.add(remember(new Unit(symbol, dimension, factor, 0.0), spellings));
    }

    private static Unit remember(Unit unit, String spellings) {
        for (String spelling : spellings.split(" ", -1)) {
            BY_SPELLING.computeIfAbsent(spelling, key -> new ArrayList<>()).add(unit);
        }
        return unit;
    }

    /** Returns all units of a dimension, the SI unit first. */
    public static List<Unit> of(Dimension dimension) {
        return ALL.stream().filter(unit -> unit.dimension() == dimension).toList();
    }

    /** Returns the unit of that exact symbol and dimension. */
    public static Unit get(Dimension dimension, String symbol) {
        return of(dimension).stream()
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit " + symbol + " of " + dimension));
    }

    /** Returns the units that a spelling may mean, in any letter case; none when it is no unit. */
    public static List<Unit> spelled(String spelling) {
        String key = spelling.strip().toLowerCase(Locale.ROOT).replace(" ", "").replace("·", "*");
        if (COUNTS.matcher(key).matches()) {
            double full = Double.parseDouble(key.substring(2));
            if (full != 1.0 && full != 100.0) {
                return List.of(shareOf(full));
            }
        }
        return Collections.unmodifiableList(BY_SPELLING.getOrDefault(key, List.of()));
    }

    /** Returns the unit of a share that is recorded as counts from 0 to {@code full}, written {@code 0-full}. */
    public static Unit shareOf(double full) {
        long whole = Math.round(full);
        return new Unit("0-" + whole, Dimension.SHARE, 1.0 / whole, 0.0);
    }

    /** Returns the unit that a spelling means for a quantity's dimension. */
    public static Optional<Unit> spelled(String spelling, Dimension dimension) {
        return spelled(spelling).stream()
                .filter(unit -> unit.dimension() == dimension)
                .findFirst();
    }

    /** Returns the unit that a spelling means for a quantity, its own dimension first. */
    public static Optional<Unit> spelled(String spelling, Quantity quantity) {
        return spelled(spelling, Dimension.of(quantity))
                .or(() -> spelled(spelling).stream()
                        .filter(unit -> Dimension.fits(quantity, unit.dimension()))
                        .findFirst());
    }
}
