package setwright.app.server.stint;

import java.util.List;
import setwright.app.server.view.Frame;

/**
 * What the page of a stint shows while it is being read.
 *
 * @param frame   around it
 * @param number  of the stint
 * @param known   what the logbook says of it already, in sentences
 * @param job     that reads it
 */
public record WaitingStint(Frame frame, long number, List<String> known, long job) {
    public WaitingStint {
        known = List.copyOf(known);
    }
}
