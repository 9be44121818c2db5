package setwright.app.server.view;

import java.util.List;

/**
 * What a page shows while what it is about is being read.
 *
 * @param frame   around it
 * @param title   in a sentence
 * @param words   what is being done
 * @param known   what the logbook says of it already, in sentences
 * @param job     that reads it
 * @param link    where it is looked at once it was read
 */
public record Waiting(Frame frame, String title, String words, List<String> known, long job, String link) {
    public Waiting {
        known = List.copyOf(known);
    }
}
