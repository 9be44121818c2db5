package setwright.app.export;

import setwright.app.units.UnitSystem;
import setwright.core.recording.Quantity;

/**
 * What a number measures: its SI unit, and the unit that people read it in.
 *
 * <p>The units shown are among those that {@code setwright.intake.map.Units} reads, so that what was taken out can come in again.
 * Source of factors: as there (BIPM, NIST SP 811).
 */
public enum Measure {
    /** A share, a probability, a count. */
    NUMBER("1", "1", "1"),
    /** A value in the unit that its own row names. */
    ITEM("unit of the item", "unit of the item", "unit of the item"),
    /** A value in the unit that the next column names. */
    BESIDE("unit beside it", "unit beside it", "unit beside it"),
    TIME("s", "s", "s"),
    RATE("1/s", "1/s", "1/s"),
    SPEED("m/s", UnitSystem.METRIC.speedUnit(), UnitSystem.IMPERIAL.speedUnit()),
    DISTANCE("m", UnitSystem.METRIC.distanceUnit(), UnitSystem.IMPERIAL.distanceUnit()),
    /** A length that is small beside a car. */
    TRAVEL("m", "mm", "in"),
    CURVATURE("1/m", "1/m", "1/ft"),
    ANGLE("rad", "deg", "deg"),
    ANGULAR_RATE("rad/s", "deg/s", "deg/s"),
    ENGINE_SPEED("rad/s", "rpm", "rpm"),
    ACCELERATION("m/s2", "m/s2", "m/s2"),
    TEMPERATURE("K", "degC", "degF"),
    MASS("kg", "kg", "lb"),
    PRESSURE("Pa", "bar", "psi"),
    TORQUE("N m", "N m", "N m");

    private static final double INCH_M = 0.0254;
    private static final double POUND_KG = 0.45359237;
    private static final double ICE_K = 273.15;
    private static final double BAR_PA = 1.0e5;
    private static final double PSI_PA = 6894.757;

    private final String si;
    private final String metric;
    private final String imperial;

    Measure(String si, String metric, String imperial) {
        this.si = si;
        this.metric = metric;
        this.imperial = imperial;
    }

    /** Returns what a quantity of a recording measures. */
    public static Measure of(Quantity quantity) {
        return switch (quantity) {
            case ENGINE_SPEED -> ENGINE_SPEED;
            case SUSPENSION_FRONT_LEFT,
                    SUSPENSION_FRONT_RIGHT,
                    SUSPENSION_REAR_LEFT,
                    SUSPENSION_REAR_RIGHT,
                    RIDE_HEIGHT_FRONT,
                    RIDE_HEIGHT_REAR,
                    RIDE_HEIGHT_FRONT_LEFT,
                    RIDE_HEIGHT_FRONT_RIGHT,
                    RIDE_HEIGHT_REAR_LEFT,
                    RIDE_HEIGHT_REAR_RIGHT -> TRAVEL;
            default ->
                switch (quantity.siUnit()) {
                    case "1" -> NUMBER;
                    case "s" -> TIME;
                    case "m/s" -> SPEED;
                    case "m" -> DISTANCE;
                    case "rad" -> ANGLE;
                    case "rad/s" -> ANGULAR_RATE;
                    case "m/s2" -> ACCELERATION;
                    case "K" -> TEMPERATURE;
                    case "kg" -> MASS;
                    case "Pa" -> PRESSURE;
                    case "N m" -> TORQUE;
                    default ->
                        throw new IllegalArgumentException(
                                quantity.words() + " is in " + quantity.siUnit() + ", which has no measure");
                };
        };
    }

    /** Returns the SI unit. */
    public String si() {
        return si;
    }

    /** Returns the unit that is shown. */
    public String unit(UnitSystem units) {
        return units == UnitSystem.METRIC ? metric : imperial;
    }

    /** Returns an SI value in the unit that is shown. */
    public double shown(double value, UnitSystem units) {
        boolean isMetric = units == UnitSystem.METRIC;
        return switch (this) {
            case NUMBER, ITEM, BESIDE, TIME, RATE, ACCELERATION, TORQUE -> value;
            case SPEED -> units.speed(value);
            case DISTANCE -> units.distance(value);
            case TRAVEL -> isMetric ? 1000.0 * value : value / INCH_M;
            case CURVATURE -> value / units.distance(1.0);
            case ANGLE, ANGULAR_RATE -> Math.toDegrees(value);
            case ENGINE_SPEED -> value * 30.0 / Math.PI;
            case TEMPERATURE -> isMetric ? value - ICE_K : (value - ICE_K) * 1.8 + 32.0;
            case MASS -> isMetric ? value : value / POUND_KG;
            case PRESSURE -> value / (isMetric ? BAR_PA : PSI_PA);
        };
    }
}
