package setwright.core.proposal;

import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;

/**
 * One item turned.
 *
 * @param item   as it is
 * @param to     new value, in the item's unit, within its range
 * @param steps  how many steps that is; negative: down
 */
public record Turn(SetupItem item, double to, long steps) {

    /** Returns how much of the range it goes, 0..1. */
    public double share() {
        return Math.abs(to - item.value()) / (item.max() - item.min());
    }

    /** Returns it as a change. */
    public SetupChange change() {
        return new SetupChange(item.name(), item.value(), to);
    }

    /** Returns where the item lies in its range afterwards: -0.5 at its least, 0.5 at its greatest. */
    public double placeAfter() {
        return (to - item.middle()) / (item.max() - item.min());
    }
}
