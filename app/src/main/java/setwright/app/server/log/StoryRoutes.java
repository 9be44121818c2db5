package setwright.app.server.log;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import setwright.app.logbook.StoryDesk;
import setwright.app.report.Page;
import setwright.app.server.log.StoryView.Day;
import setwright.app.server.log.StoryView.Entry;
import setwright.app.server.view.Frame;
import setwright.app.server.view.Told;
import setwright.logbook.Logbook;
import setwright.logbook.row.EntryRow;

/** Answers what is asked of the story, and takes notes. */
public final class StoryRoutes {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE, d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Logbook logbook;
    private final String token;

    /** Makes them for a logbook. */
    public StoryRoutes(Logbook logbook, String token) {
        this.logbook = logbook;
        this.token = token;
    }

    /**
     * A note that is to be taken.
     *
     * @param stint  that it is about; 0 for the day
     */
    record Note(String words, long stint) {}

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.get("/story", this::page);
        routes.post("/notes", context -> {
            Note note = context.bodyAsClass(Note.class);
            new StoryDesk(logbook).note(note.words(), note.stint() > 0 ? Optional.of(note.stint()) : Optional.empty());
            context.json(new Told("Noted."));
        });
    }

    private void page(Context context) {
        String search =
                Objects.requireNonNullElse(context.queryParam("search"), "").strip();
        StoryDesk desk = new StoryDesk(logbook);
        List<EntryRow> entries = search.isEmpty() ? desk.all() : desk.search(search);
        context.html(Page.render(
                "live/story.jte",
                new StoryView(Frame.of(context, token, "Logbook", "story", List.of()), search, days(entries))));
    }

    private static List<Day> days(List<EntryRow> entries) {
        ZoneId zone = ZoneId.systemDefault();
        Map<LocalDate, List<Entry>> days = new TreeMap<>(Comparator.reverseOrder());
        for (EntryRow entry : entries) {
            days.computeIfAbsent(LocalDate.ofInstant(entry.writtenAt(), zone), day -> new ArrayList<>())
                    .add(new Entry(
                            TIME.format(entry.writtenAt().atZone(zone)),
                            entry.kind(),
                            entry.words(),
                            entry.stintId().orElse(0L)));
        }
        return days.entrySet().stream()
                .map(day -> new Day(DATE.format(day.getKey()), day.getValue()))
                .toList();
    }
}
