package setwright.app.report.change;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.app.plot.Markup;
import setwright.app.report.TechniqueRow;
import setwright.app.report.change.PredictionView.EffectCell;
import setwright.app.report.change.PredictionView.LegendItem;

/**
 * Everything the page of a proposal shows.
 *
 * @param title       of the document
 * @param facts       what was read: recording, laps, car
 * @param headline    what to do
 * @param reasons     for what, and why
 * @param technique   what the driver can do himself, to be tried first
 * @param besides     what asks for attention besides the balance
 * @param expect      what the next stint should show, and what would refute it
 * @param doubts      what may be wrong
 * @param classes     headings of the table of what was weighed: the target, then phases in slower and faster corners
 * @param caption     of that table
 * @param candidates  the chosen change first, then those weighed, then those refused
 * @param refused     why those are not to be made
 * @param chosen      the chosen change in full; null without one
 * @param legend      what the colours mean
 * @param style       the style sheet
 */
public record ProposalView(
        String title,
        List<String> facts,
        String headline,
        List<String> reasons,
        List<TechniqueRow> technique,
        List<String> besides,
        List<String> expect,
        List<String> doubts,
        List<Heading> classes,
        String caption,
        List<Row> candidates,
        List<Refusal> refused,
        @Nullable PredictionView chosen,
        List<LegendItem> legend,
        Markup style) {
    public ProposalView {
        facts = List.copyOf(facts);
        reasons = List.copyOf(reasons);
        technique = List.copyOf(technique);
        besides = List.copyOf(besides);
        expect = List.copyOf(expect);
        doubts = List.copyOf(doubts);
        classes = List.copyOf(classes);
        candidates = List.copyOf(candidates);
        refused = List.copyOf(refused);
        legend = List.copyOf(legend);
    }

    /** What a column is about; narrow screens leave out those with style class {@code wide}. */
    public record Heading(String words, String css) {}

    /**
     * One change.
     *
     * @param change    what is turned
     * @param standing  chosen, weighed or refused
     * @param css       style class of the row
     * @param time      change of the lap time
     * @param cells     change of balance, in the order of the headings
     */
    public record Row(String change, String standing, String css, EffectCell time, List<EffectCell> cells) {}

    /**
     * Why a change is not to be made.
     *
     * @param change   what would be turned
     * @param promise  what it would do in the target and to the lap
     * @param why      with the figures that refuse it
     */
    public record Refusal(String change, String promise, String why) {}
}
