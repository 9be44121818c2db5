package setwright.core.slip;

import java.util.OptionalInt;

/**
 * A wheel that locked or spun.
 *
 * @param kind       what
 * @param lap        lap number
 * @param corner     number of the corner in whose stretch, from its approach to its exit, it was; empty elsewhere
 * @param stationM   where it began, m along the reference line
 * @param timeS      when, s since the start of the recording
 * @param durationS  how long, s
 * @param slipRatio  greatest slip ratio; below zero for a lock, -1 for a wheel that stands
 */
public record WheelEvent(
        Kind kind, int lap, OptionalInt corner, double stationM, double timeS, double durationS, double slipRatio) {

    /** What wheels do. */
    public enum Kind {
        FRONT_LOCK("front lock"),
        REAR_LOCK("rear lock"),
        /** Only the unloaded inner wheel, in a bend. */
        INSIDE_FRONT_LOCK("inside front lock"),
        INSIDE_REAR_LOCK("inside rear lock"),
        /** Both wheels of the driven axle. */
        WHEELSPIN("wheelspin"),
        /** Only the unloaded wheel of the driven axle. */
        INSIDE_WHEELSPIN("inside wheelspin");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }
}
