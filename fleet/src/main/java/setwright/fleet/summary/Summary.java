package setwright.fleet.summary;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The answers.
 *
 * @param version    of this shape
 * @param recordings  what came of all recordings
 * @param problems   of the car and of the driving, the most frequent first
 * @param corners    where they are, the most costly first
 * @param drivers    who has more than is usual, the surest first
 * @param changes    what was tried, the most often tried first
 * @param unchanged  what became of problems and lap times between successive recordings with the same setup; what a change is to be held against
 * @param doubts     what to keep in mind with these answers
 */
public record Summary(
        int version,
        Recordings recordings,
        List<Problem> problems,
        List<AtCorner> corners,
        List<AtDriver> drivers,
        List<Change> changes,
        Unchanged unchanged,
        List<String> doubts) {
    static final int VERSION = 1;

    /**
     * What came of recordings.
     *
     * @param all                in the tables
     * @param judged             with a verdict
     * @param notEnoughEvidence  without enough evidence
     * @param failed             that could not be read or judged
     * @param drivers            with a judged recording
     * @param circuits           with a judged recording
     */
    public record Recordings(long all, long judged, long notEnoughEvidence, long failed, long drivers, long circuits) {}

    /**
     * A problem of the car or a fault of the driving.
     *
     * @param what        in words
     * @param kind        car, driver or driving
     * @param recordings  that show it
     * @param of          recordings that were judged
     * @param drivers     with such a recording
     * @param share       of the judged recordings
     * @param costS       what it costs a lap where it shows, median, s; empty where nothing tells
     */
    public record Problem(
            String what, String kind, long recordings, long of, long drivers, Figure share, OptionalDouble costS) {}

    /**
     * A problem at a corner.
     *
     * @param circuit     name
     * @param corner      number
     * @param what        in words
     * @param recordings  that show it there
     * @param of          judged recordings of this circuit
     * @param drivers     with such a recording
     * @param share       of the judged recordings
     * @param costS       mean over all judged recordings of what it costs a lap there, s; a problem of several corners counts in equal parts
     */
    public record AtCorner(
            String circuit,
            int corner,
            String what,
            long recordings,
            long of,
            long drivers,
            Figure share,
            Figure costS) {}

    /**
     * A driver who does something more often than drivers do here.
     *
     * @param driver       name
     * @param what         the fault
     * @param recordings   that show it
     * @param of           his judged recordings
     * @param share        expected share, drawn toward the others' where he has few
     * @param usual        expected share of a driver here
     * @param probability  that his share is above the usual one
     */
    public record AtDriver(
            String driver, String what, long recordings, long of, double share, double usual, double probability) {}

    /**
     * An item that was changed alone.
     *
     * @param item        name on the car sheet
     * @param direction   up, down, or from one word to another
     * @param tries       successive recordings that differ in this item only
     * @param drivers     who tried
     * @param told        of the tries, those with a problem before that the recording after could tell of
     * @param gone        of these, after which the problem was not found any more
     * @param less        of these, after which it was smaller
     * @param helped      share of gone or less
     * @param lapTimeS    mean change of the median lap time, s; negative: quicker
     */
    public record Change(
            String item,
            String direction,
            long tries,
            long drivers,
            long told,
            long gone,
            long less,
            Figure helped,
            Figure lapTimeS) {}

    /**
     * Successive recordings with the same setup.
     *
     * @param pairs     how many
     * @param drivers   of how many
     * @param told      of the pairs, those with a problem before that the recording after could tell of
     * @param gone      of these, after which the problem was not found any more, though nothing was changed
     * @param less      of these, after which it was smaller
     * @param better    share of gone or less
     * @param lapTimeS  mean change of the median lap time, s
     */
    public record Unchanged(
            long pairs, long drivers, long told, long gone, long less, Figure better, Figure lapTimeS) {}
}
