package setwright.app.command;

import setwright.app.logbook.StintDesk;
import setwright.logbook.Logbook;

/** Stands where a call must not ask for stints. */
final class NoLogbook {
    private NoLogbook() {}

    static StintDesk open(Logbook logbook) {
        throw new AssertionError("no stint is to be read");
    }
}
