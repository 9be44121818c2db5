package setwright.app.command;

import setwright.app.logbook.StintDesk;
import setwright.logbook.Logbook;

/** Sets up what judges the stints of a logbook. */
@FunctionalInterface
public interface DeskOpener {
    /** Returns the desk of a logbook. */
    StintDesk open(Logbook logbook);
}
