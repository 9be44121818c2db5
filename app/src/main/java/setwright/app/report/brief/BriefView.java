package setwright.app.report.brief;

import java.util.List;
import setwright.app.plot.Markup;

/**
 * What a brief shows.
 *
 * @param title    of the document
 * @param facts    who, where, in what, how quick
 * @param driver   the driver's sheet
 * @param engineer the engineer's sheet
 * @param style    the style sheet
 */
public record BriefView(String title, List<String> facts, Driver driver, Engineer engineer, Markup style) {

    /**
     * The driver's sheet.
     *
     * @param headline  what it is about, one sentence
     * @param places    to work on, at most three
     * @param steady    what is good already
     * @param car       what will be done to the car
     * @param map       the circuit with the places
     */
    public record Driver(String headline, List<Place> places, List<String> steady, List<String> car, Markup map) {}

    /**
     * A place to work on.
     *
     * @param mark    its number on the map
     * @param corner  which corner
     * @param worth   what it is worth
     * @param what    what happens there
     * @param how     what to do otherwise
     */
    public record Place(int mark, String corner, String worth, String what, List<String> how) {}

    /**
     * The engineer's sheet.
     *
     * @param headline  the verdict
     * @param reasons   why
     * @param findings  rows of the table
     * @param change    what to change and why
     * @param expect    what the next stint should show
     * @param refused   changes that are not to be made
     * @param laps      what was read and put aside
     */
    public record Engineer(
            String headline,
            List<String> reasons,
            List<Row> findings,
            List<String> change,
            List<String> expect,
            List<String> refused,
            List<String> laps) {}

    /** A problem. */
    public record Row(String name, String corners, String setOffBy, String cause, String sure, String price) {}
}
