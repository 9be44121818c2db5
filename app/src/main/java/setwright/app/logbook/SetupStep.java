package setwright.app.logbook;

import setwright.logbook.row.CarRow;
import setwright.logbook.row.SetupRow;

/**
 * A setup that is on its car, and how it came there.
 *
 * @param car    it belongs to
 * @param setup  the version that is on the car now
 * @param made   whether this version is new
 * @param moved  whether another one was on the car before
 * @param why    it was put on; empty when nobody said
 */
public record SetupStep(CarRow car, SetupRow setup, boolean made, boolean moved, String why) {
    /** Returns what happened, in a sentence. */
    public String words() {
        if (!moved && !made) {
            return car.name() + ": setup " + setup.number() + " is on the car already.";
        }
        if (!made) {
            return car.name() + ": setup " + setup.number() + " is on the car again" + reason() + ".";
        }
        String how = setup.difference().isEmpty() ? ", as it came" : ": " + setup.difference();
        return car.name() + ": setup " + setup.number() + how + reason() + ".";
    }

    private String reason() {
        return why.isEmpty() ? "" : " (" + why + ")";
    }
}
