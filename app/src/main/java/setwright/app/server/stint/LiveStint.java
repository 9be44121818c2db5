package setwright.app.server.stint;

import java.util.List;
import setwright.app.report.ReportView;
import setwright.app.server.view.Frame;

/**
 * Everything the live page of a stint shows.
 *
 * @param frame   around it
 * @param number  of the stint
 * @param report  the chain as far as the pattern
 * @param change  what could be changed
 * @param trial   back to back
 * @param order   of the car, and what the stint is held against
 * @param story   what the logbook says of it, in sentences
 * @param job     that is still at work on it; 0 when none is
 */
public record LiveStint(
        Frame frame,
        long number,
        ReportView report,
        ChangePart change,
        TrialPart trial,
        OrderPart order,
        List<String> story,
        long job) {
    public LiveStint {
        story = List.copyOf(story);
    }
}
