package setwright.core.advice;

import java.util.List;
import java.util.Optional;

/** One piece of advice with its evidence. */
public sealed interface Advice permits GearingAdvice, BrakeAdvice, TravelAdvice, TemperatureAdvice, DriftAdvice {

    /** Returns what it is about. */
    Topic topic();

    /** Returns the laps that show it, ascending. */
    List<Integer> laps();

    /** Returns the corners where it shows, ascending; empty when it is not of a place. */
    default List<Integer> corners() {
        return List.of();
    }

    /** Returns the item to be turned; empty when the advice is not of the setup, or the sheet does not have the item. */
    default Optional<Move> move() {
        return Optional.empty();
    }

    /**
     * An item turned.
     *
     * @param item  name on the sheet
     * @param from  value now, in its unit
     * @param to    value then
     * @param unit  as on the sheet
     */
    record Move(String item, double from, double to, String unit) {}
}
