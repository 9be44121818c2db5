package setwright.core.circuit;

import java.util.List;

/**
 * A circuit as the laps showed it: reference line and numbered corners. Kept and used again, it gives every recording of
 * the circuit the same stations and corner numbers.
 *
 * @param name     what people call it
 * @param line     the reference line, station 0 at the start line
 * @param corners  in driving order, numbered from 1
 * @param anchor   how positions are tied to the ground, so that other recordings can be laid on the line
 */
public record Circuit(String name, ReferenceLine line, List<Corner> corners, Anchor anchor) {
    public Circuit {
        corners = List.copyOf(corners);
    }

    /** How the line's coordinates are tied to the ground. */
    public sealed interface Anchor permits Geographic, LocalPlane, Unanchored {}

    /**
     * The plane's origin on the earth.
     *
     * @param latitudeRad   of the origin, rad
     * @param longitudeRad  of the origin, rad
     */
    public record Geographic(double latitudeRad, double longitudeRad) implements Anchor {}

    /** The logger's own plane, the same in every recording. */
    public record LocalPlane() implements Anchor {}

    /** Built from yaw rate and speed only: shape without a place. */
    public record Unanchored() implements Anchor {}
}
