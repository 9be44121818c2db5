package setwright.app.report.sweep;

import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.report.fit.CarFitView.Plot;

/**
 * Everything the page of a sweep shows.
 *
 * @param title     of the document
 * @param facts     circuit, car, number of setups
 * @param headline  the answer
 * @param remarks   on the answer
 * @param plots     over one item; empty for two
 * @param map       over two items; empty for one
 * @param mapWords  what the map shows
 * @param unit      of speeds
 * @param item      heading of the table's first column
 * @param rows      of the table
 * @param corners   which corners are called slow and fast
 * @param limits    what such a lap cannot know
 * @param style     the style sheet
 */
public record SweepView(
        String title,
        List<String> facts,
        String headline,
        List<String> remarks,
        List<Plot> plots,
        Markup map,
        String mapWords,
        String unit,
        String item,
        List<Row> rows,
        String corners,
        List<String> limits,
        Markup style) {
    public SweepView {
        facts = List.copyOf(facts);
        remarks = List.copyOf(remarks);
        plots = List.copyOf(plots);
        rows = List.copyOf(rows);
        limits = List.copyOf(limits);
    }

    /**
     * A setup.
     *
     * @param present  whether it is the one on the sheet
     */
    public record Row(
            String setting,
            boolean present,
            boolean quickest,
            String time,
            String difference,
            String balanceSlow,
            String balanceFast,
            String speedSlow,
            String speedFast,
            String top,
            String front,
            String rear,
            String engine) {}
}
