package setwright.app.logbook;

import java.nio.file.Path;
import java.util.Optional;
import setwright.logbook.Logbook;

/**
 * Where a logbook is.
 *
 * @param place       a folder, or {@code postgres://user@host:port/name}
 * @param recordings  where the channels of recordings lie; a folder has its own place for them
 */
public record LogbookPlace(String place, Optional<Path> recordings) {
    /** Opens the logbook that is there. */
    public Logbook open() {
        return Logbook.open(place, recordings, false);
    }

    /** Opens the logbook; begins one where there is none. */
    public Logbook begin() {
        return Logbook.open(place, recordings, true);
    }
}
