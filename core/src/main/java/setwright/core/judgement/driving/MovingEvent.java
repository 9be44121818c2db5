package setwright.core.judgement.driving;

import java.util.Optional;
import setwright.core.judgement.LostTime;
import setwright.core.judgement.Repeatability.Measure;

/**
 * An event that differs from lap to lap.
 *
 * @param measure    which
 * @param scatter    robust standard deviation here, in the measure's unit
 * @param elsewhere  median of the same over this driver's other corners
 * @param clear      whether it is more than elsewhere even at the lower end of its 95 % interval
 * @param source     what the cost rests on
 * @param cost       what its worse half costs against the better quarter of the same laps; empty without evidence
 * @param better     in which direction it pays, as a word such as {@code later}; empty without evidence
 * @param lapLow     the lap with the earliest (or slowest)
 * @param lapHigh    the lap with the latest (or fastest)
 */
public record MovingEvent(
        Measure measure,
        double scatter,
        double elsewhere,
        boolean clear,
        Source source,
        Optional<LostTime> cost,
        String better,
        int lapLow,
        int lapHigh) {

    /** What a cost rests on. */
    public enum Source {
        LAPS("these laps"),
        PHYSICS("physics"),
        NONE("not enough evidence");

        private final String words;

        Source(String words) {
            this.words = words;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }
}
