package setwright.app.server.stint;

import java.util.Optional;
import setwright.app.logbook.KeptStint;
import setwright.app.logbook.StintDesk.KeptLaps;

/**
 * What the page says of the car's order in a stint, and of the stint that this one is held against.
 *
 * @param good      whether people said that the car was in good order
 * @param suffices  whether there are laps enough to say so
 * @param against   number of the stint that it is held against; 0 when that is a reckoned car
 * @param here      the car and the circuit, for a sentence
 */
public record OrderPart(boolean good, boolean suffices, long against, String here) {
    static OrderPart of(KeptLaps laps) {
        KeptStint stint = laps.stint();
        return new OrderPart(
                stint.stint().goodOrder(),
                stint.canBeBaseline(),
                laps.baseline().map(KeptStint::number).orElse(0L),
                stint.car().name() + " at " + stint.circuit().name());
    }

    /** Returns what its button does; empty when there is none. */
    public Optional<String> act() {
        return good
                ? Optional.of("Take that back")
                : suffices ? Optional.of("The car was in good order here") : Optional.empty();
    }
}
