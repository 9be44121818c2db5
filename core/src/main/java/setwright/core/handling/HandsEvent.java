package setwright.core.handling;

/**
 * Something the hands did that the corner alone does not explain.
 *
 * @param kind       what they did
 * @param phase      in which phase it began
 * @param stationM   where it began, m along the reference line
 * @param timeS      when it began, s since the start of the recording
 * @param durationS  how long it lasted, s
 * @param sizeRad    how far the steering wheel moved (or, for a hold, how far it should have), rad, &gt;= 0
 */
public record HandsEvent(Kind kind, Phase phase, double stationM, double timeS, double durationS, double sizeRad) {

    /** The gestures. */
    public enum Kind {
        /** Wheel held still while the corner still tightens: waiting for the car, or a quiet hand. */
        HOLD("hold"),
        /** Wheel moved against the corner and back. */
        CORRECTION("correction"),
        /** More lock while the path does not tighten. */
        WIND_ON("wind-on"),
        /** More reversals than this driver needs elsewhere. */
        SAWING("sawing");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** Tells whether the trace itself shows it, whatever the axles did; a hold and winding on look like ordinary steering. */
        public boolean seenByItself() {
            return this == CORRECTION || this == SAWING;
        }

        /** Returns the word a person reads. */
        public String words() {
            return words;
        }
    }
}
