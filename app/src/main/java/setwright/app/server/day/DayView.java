package setwright.app.server.day;

import java.util.List;
import setwright.app.server.view.Frame;

/**
 * Everything the first page shows.
 *
 * @param frame   around it
 * @param stints  the newest first
 * @param cars    names of those known
 * @param drivers names of those known, the last first
 * @param watched folder of which new files are read in by themselves; empty when there is none
 */
public record DayView(Frame frame, List<StintRow> stints, List<String> cars, List<String> drivers, String watched) {
    public DayView {
        stints = List.copyOf(stints);
        cars = List.copyOf(cars);
        drivers = List.copyOf(drivers);
    }

    /**
     * A stint of the list.
     *
     * @param number  its own
     * @param when    it came in
     * @param order   in good order, when people said so
     * @param what    its recording
     */
    public record StintRow(
            long number,
            String when,
            String driver,
            String circuit,
            String car,
            String laps,
            String best,
            String order,
            String what) {}
}
