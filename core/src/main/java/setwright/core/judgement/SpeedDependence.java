package setwright.core.judgement;

import java.util.Locale;

/**
 * How a deviation of the balance changes with speed: what springs, bars and tyres do is about the same in all corners, what wings and
 * ride heights do grows with the square of the speed, as lift does.
 *
 * @param slopeRadPerM2S2  growth of the deviation with the square of the speed, rad/(m/s)², in the direction of the problem: positive
 *                         when faster corners show more of it
 * @param low              lower end of its 95 % interval
 * @param high             upper end
 * @param probabilityAero  that it grows as aerodynamic loads do rather than being the same at all speeds, 0..1; 0.5 where the
 *                         corners do not tell
 */
public record SpeedDependence(double slopeRadPerM2S2, double low, double high, double probabilityAero) {
    /** From here on, or below one less this, it is called the one or the other. */
    private static final double SURE = 0.8;
    /** From standstill to 114 km/h, m²/s². */
    private static final double SQUARES = 1000.0;

    /** Returns what it is to be called. */
    public Kind kind() {
        if (probabilityAero >= SURE) {
            return Kind.AERODYNAMIC;
        }
        return probabilityAero <= 1.0 - SURE ? Kind.MECHANICAL : Kind.OPEN;
    }

    /** Says it in words. */
    String sentence() {
        String cause = switch (kind()) {
            case AERODYNAMIC -> "it grows as aerodynamic loads do";
            case MECHANICAL -> "it is mechanical, much the same at all speeds or less in fast corners";
            case OPEN -> "mechanical or aerodynamic, the corners do not tell";
        };
        return String.format(
                Locale.ROOT,
                "Over the square of the speed it changes by %+.2f deg per 1000 m2/s2 (%+.2f to %+.2f): %s (probability of aerodynamic"
                        + " %.2f).",
                Math.toDegrees(SQUARES * slopeRadPerM2S2),
                Math.toDegrees(SQUARES * low),
                Math.toDegrees(SQUARES * high),
                cause,
                probabilityAero);
    }

    /** Where the loads come from that make the problem. */
    public enum Kind {
        AERODYNAMIC,
        MECHANICAL,
        OPEN
    }
}
