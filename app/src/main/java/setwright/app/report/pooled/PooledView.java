package setwright.app.report.pooled;

import java.util.List;
import setwright.app.plot.Markup;

/**
 * What the page of several stints shows.
 *
 * @param title     of the document
 * @param facts     what was read
 * @param headline  the verdict
 * @param verdict   its style class
 * @param reason    why
 * @param next      what to do
 * @param drivers   names, the columns of the table
 * @param findings  rows of the table
 * @param stints    each recording with its own verdict
 * @param style     the style sheet
 */
public record PooledView(
        String title,
        List<String> facts,
        String headline,
        String verdict,
        String reason,
        List<String> next,
        List<String> drivers,
        List<Row> findings,
        List<StintRow> stints,
        Markup style) {

    /**
     * One problem.
     *
     * @param name     what and where
     * @param belongs  whose it is
     * @param common   probability that it is there whoever drives
     * @param parts    one for each driver; empty text for one who is not held against the others
     * @param why      one sentence
     */
    public record Row(String name, String belongs, String common, List<String> parts, String why) {}

    /** One recording. */
    public record StintRow(String driver, String recording, String laps, String verdict, String reason) {}
}
