package setwright.app.report;

import java.util.List;
import setwright.app.plot.Markup;
import setwright.app.report.sensors.SensorsView;
import setwright.app.story.Story;

/**
 * Everything the report's templates show.
 *
 * @param title     of the document
 * @param facts     what was read: recording, circuit, laps, car
 * @param story     the argument
 * @param verdict   its style class
 * @param ribbon    the lap unrolled
 * @param laps      first link
 * @param driving   second link
 * @param balance   third link
 * @param cause     fourth link
 * @param pattern   fifth link
 * @param sensors   what the other sensors tell
 * @param style     the style sheet
 * @param script    choosing a corner; the page works without it
 */
public record ReportView(
        String title,
        List<String> facts,
        Story story,
        String verdict,
        RibbonView ribbon,
        LapsView laps,
        DrivingView driving,
        BalanceView balance,
        CauseView cause,
        PatternView pattern,
        SensorsView sensors,
        Markup style,
        Markup script) {
    public ReportView {
        facts = List.copyOf(facts);
    }
}
