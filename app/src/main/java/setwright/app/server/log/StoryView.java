package setwright.app.server.log;

import java.util.List;
import setwright.app.server.view.Frame;

/**
 * Everything the page of the story shows.
 *
 * @param frame   around it
 * @param search  words that were looked for; empty without a search
 * @param days    with what was written on them, the newest first
 */
public record StoryView(Frame frame, String search, List<Day> days) {
    public StoryView {
        days = List.copyOf(days);
    }

    /** A day. */
    public record Day(String date, List<Entry> entries) {
        public Day {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Something that was done.
     *
     * @param time   of the day
     * @param kind   what it tells of
     * @param words  in a sentence
     * @param stint  that it is about; 0 when it is about none
     */
    public record Entry(String time, String kind, String words, long stint) {}
}
