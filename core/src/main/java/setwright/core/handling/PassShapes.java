package setwright.core.handling;

import setwright.core.circuit.Corner;
import setwright.core.recording.Channel;

/**
 * A pass as curves over the corner, each sampled at the same {@link #POINTS} equal steps of station from the corner's
 * start to its end, so that passes can be laid over each other.
 *
 * @param speed     m/s
 * @param brake     0..1
 * @param throttle  0..1
 * @param offset    m to the left of the reference line; NaN without position
 */
public record PassShapes(Channel speed, Channel brake, Channel throttle, Channel offset) {

    /** Number of points of each curve. */
    public static final int POINTS = 64;

    /** Returns the distance between points of a corner, m. */
    public static double stepM(Corner corner) {
        return (corner.endM() - corner.startM()) / (POINTS - 1);
    }

    /** Returns a curve at a station, m, between its points; at its ends outside the corner; NaN for NaN. */
    public static double at(Channel curve, Corner corner, double stationM) {
        double place = place(corner, stationM);
        int before = (int) Math.min(place, POINTS - 2.0);
        double rest = place - before;
        return Double.isNaN(place) ? Double.NaN : (1.0 - rest) * curve.get(before) + rest * curve.get(before + 1);
    }

    /** Returns where a station lies among the points of a corner, 0..POINTS - 1: its ends for what lies outside; NaN for NaN. */
    public static double place(Corner corner, double stationM) {
        return Math.max(0.0, Math.min((stationM - corner.startM()) / stepM(corner), POINTS - 1.0));
    }
}
