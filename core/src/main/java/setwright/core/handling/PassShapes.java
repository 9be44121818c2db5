package setwright.core.handling;

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
}
