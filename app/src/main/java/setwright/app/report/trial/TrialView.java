package setwright.app.report.trial;

import java.util.List;
import setwright.app.plot.Markup;

/**
 * What the page of a trial shows.
 *
 * @param title     of the document
 * @param facts     what was changed and driven
 * @param headline  what to do
 * @param reason    why
 * @param next      what would settle it
 * @param doubts    what to mind
 * @param plots     lap time, and the balance that was to be cured
 * @param measured  each figure with its interval
 * @param effects   predicted beside measured
 * @param style     the style sheet
 */
public record TrialView(
        String title,
        List<String> facts,
        String headline,
        String reason,
        List<String> next,
        List<String> doubts,
        List<Plot> plots,
        List<String> measured,
        List<EffectRow> effects,
        Markup style) {

    /**
     * One drawing.
     *
     * @param title  of it
     * @param words  how to read it
     */
    public record Plot(String title, String words, Markup drawing) {}

    /**
     * One figure.
     *
     * @param place          what it is of
     * @param predicted      before it was driven; empty where nothing could be told
     * @param predictedRange that holds it eight times in ten
     * @param measured       changed less unchanged
     * @param measuredRange  95 in 100
     * @param bar            the measured interval, drawn; empty for what has another unit than the rest
     * @param clear          whether it is more than chance, in words
     */
    public record EffectRow(
            String place,
            String predicted,
            String predictedRange,
            String measured,
            String measuredRange,
            Markup bar,
            String clear) {}
}
