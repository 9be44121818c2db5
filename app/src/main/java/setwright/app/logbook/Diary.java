package setwright.app.logbook;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import setwright.logbook.Tables;
import setwright.logbook.row.EntryRow;

/** Writes the story: each thing that was done, in a sentence. */
final class Diary {
    /** What a sentence tells of. */
    enum Kind {
        SETUP,
        STINT,
        DIAGNOSIS,
        PROPOSAL,
        TRIAL,
        VERDICT,
        NOTE;

        String words() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private Diary() {}

    static void write(Tables tables, Kind kind, long car, Optional<Long> stint, String words) {
        write(tables, kind, Optional.of(car), stint, words);
    }

    static void write(Tables tables, Kind kind, Optional<Long> car, Optional<Long> stint, String words) {
        tables.entries().add(new EntryRow(0, now(), kind.words(), car, stint, words));
    }

    /** As fine as the tables keep it. */
    static Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }
}
