package setwright.app.report.demo;

import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.story.DemoWords;

/**
 * Everything the page shows.
 *
 * @param title     of the document
 * @param facts     car and circuit
 * @param headline  the verdict
 * @param acts      in order
 * @param plots     stints beside each other
 * @param evidence  file name of the report
 * @param style     the style sheet
 */
public record DemoView(
        String title,
        List<String> facts,
        String headline,
        List<DemoWords.Act> acts,
        List<Plot> plots,
        String evidence,
        Markup style) {
    public DemoView {
        facts = List.copyOf(facts);
        acts = List.copyOf(acts);
        plots = List.copyOf(plots);
    }

    /** A drawing with what it shows, in words. */
    public record Plot(String title, String words, Markup drawing) {}
}
