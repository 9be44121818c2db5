package setwright.app.report.fit;

import java.util.List;
import setwright.app.plot.Markup;

/**
 * Everything the page of an identified car shows.
 *
 * @param title     of the document
 * @param facts     what was read: recordings, laps, car
 * @param headline  the answer in one sentence
 * @param values    each quantity before and after
 * @param told      what told the quantities that the laps tell
 * @param untold    what would tell the others
 * @param plots     data beside the fitted car
 * @param style     the style sheet
 */
public record CarFitView(
        String title,
        List<String> facts,
        String headline,
        List<ValueRow> values,
        List<String> told,
        List<String> untold,
        List<Plot> plots,
        Markup style) {
    public CarFitView {
        facts = List.copyOf(facts);
        values = List.copyOf(values);
        told = List.copyOf(told);
        untold = List.copyOf(untold);
        plots = List.copyOf(plots);
    }

    /**
     * One quantity.
     *
     * @param bar  both ranges drawn on one scale
     */
    public record ValueRow(
            String words,
            String before,
            String beforeRange,
            String after,
            String afterRange,
            String unit,
            boolean told,
            Markup bar) {}

    /**
     * Data beside the fitted car.
     *
     * @param keys  what each colour is
     */
    public record Plot(String title, String xWords, String yWords, List<Key> keys, Markup drawing) {}

    /** One series explained. */
    public record Key(String css, String words) {}
}
