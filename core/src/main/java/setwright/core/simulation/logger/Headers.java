package setwright.core.simulation.logger;

import java.util.Locale;
import setwright.core.recording.Quantity;

/** What a logger calls its columns: plain words, in one of several styles. */
public final class Headers {
    private Headers() {}

    /** How headers look. */
    public enum Style {
        /** Words with blanks, such as {@code steering wheel angle}. */
        WORDS,
        /** Words joined by underscores. */
        UNDERSCORES,
        /** Fewer words. */
        SHORT
    }

    /** Returns the header of a quantity, without unit. */
    static String of(Quantity quantity, Style style) {
        return switch (style) {
            case WORDS -> quantity.words();
            case UNDERSCORES -> quantity.words().replace(' ', '_');
            case SHORT -> brief(quantity);
        };
    }

    private static String brief(Quantity quantity) {
        return switch (quantity) {
            case TIME -> "t";
            case STEERING_WHEEL_ANGLE -> "steer";
            case LONGITUDINAL_ACCELERATION -> "accel long";
            case LATERAL_ACCELERATION -> "accel lat";
            case VERTICAL_ACCELERATION -> "accel vert";
            case ENGINE_SPEED -> "engine";
            case YAW_RATE -> "yaw";
            case LAP_NUMBER -> "lap";
            case LAP_TRIGGER -> "lap pulse";
            case LAP_DISTANCE -> "distance";
            case LATITUDE -> "latitude";
            case LONGITUDE -> "longitude";
            case POSITION_X -> "east";
            case POSITION_Y -> "north";
            case FUEL_MASS -> "fuel";
            default -> shortened(quantity.words());
        };
    }

    private static String shortened(String words) {
        String text = words.replace("front left", "FL")
                .replace("front right", "FR")
                .replace("rear left", "RL")
                .replace("rear right", "RR")
                .replace("wheel speed", "wheel")
                .replace("suspension travel", "damper");
        return text.equals(words) ? words.toLowerCase(Locale.ROOT) : text;
    }
}
