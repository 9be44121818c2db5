package setwright.app.json;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.StintLineRow;

/** Writes the story of a logbook, or its stints, as JSON of version 1: docs/log.schema.json. */
public final class LogJsonWriter {
    private static final int VERSION = 1;

    private LogJsonWriter() {}

    record Story(int version, List<Entry> entries) {}

    record Entry(Instant at, String kind, Optional<Long> stint, String words) {}

    record Stints(int version, List<StintJson> stints) {}

    /** Returns the JSON text of the story, ending with a line break. */
    public static String write(List<EntryRow> entries) {
        return Numbers.text(new Story(
                VERSION,
                entries.stream()
                        .map(entry -> new Entry(entry.writtenAt(), entry.kind(), entry.stintId(), entry.words()))
                        .toList()));
    }

    /** Returns the JSON text of the stints, ending with a line break. */
    public static String stints(List<StintLineRow> stints) {
        return Numbers.text(
                new Stints(VERSION, stints.stream().map(StintJson::of).toList()));
    }
}
