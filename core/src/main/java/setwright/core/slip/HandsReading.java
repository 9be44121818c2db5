package setwright.core.slip;

import setwright.core.handling.HandsEvent;

/**
 * A gesture of the hands with the axle that it answers.
 *
 * @param lap       lap number
 * @param corner    corner number
 * @param event     the gesture
 * @param cause     what it answers
 * @param frontUse  greatest use of the front axle from a reaction time before to the gesture's end, for winding on the middle one
 *                  of the gesture itself; not a number where unknown
 * @param rearUse   greatest use of the rear axle from a reaction time before to the gesture's end
 */
public record HandsReading(int lap, int corner, HandsEvent event, Cause cause, double frontUse, double rearUse) {

    /**
     * Tells whether the laps bear this gesture out. A correction or sawing is a movement that anyone sees in the trace; a hold and
     * winding on look like ordinary steering, and are told only where the axle that they would answer was near its peak.
     */
    public boolean borneOut() {
        return event.kind().seenByItself() || cause.isAxle();
    }

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

        /** Tells whether it is an axle near its peak. */
        public boolean isAxle() {
            return this == FRONT || this == REAR;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }
}
