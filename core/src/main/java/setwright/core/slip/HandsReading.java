package setwright.core.slip;

import setwright.core.handling.HandsEvent;

/**
 * A gesture of the hands with the axle that it answers.
 *
 * @param lap       lap number
 * @param corner    corner number
 * @param event     the gesture
 * @param cause     what it answers
 * @param frontUse  greatest use of the front axle from a reaction time before to the gesture's end; not a number where unknown
 * @param rearUse   of the rear axle
 */
public record HandsReading(int lap, int corner, HandsEvent event, Cause cause, double frontUse, double rearUse) {

    /** What hands answer. */
    public enum Cause {
        /** The front axle, near its peak. */
        FRONT("front"),
        /** The rear axle, near its peak. */
        REAR("rear"),
        /** The axle in question was not near its peak: it is the driver's own doing. */
        DRIVER("driver"),
        /** Nothing is known of the axles there. */
        UNKNOWN("not seen");

        private final String words;

        Cause(String words) {
            this.words = words;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }
}
