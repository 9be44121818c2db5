package setwright.core.simulation.sweep;

import java.util.List;
import setwright.core.car.SetupItem;

/**
 * A setup item and the values it is turned to.
 *
 * @param item    as on the sheet, with its present value
 * @param values  ascending, in the sheet's unit, two or more
 */
public record SweepItem(SetupItem item, List<Double> values) {
    public SweepItem {
        values = List.copyOf(values);
        if (values.size() < 2) {
            throw new IllegalArgumentException(
                    "a sweep of " + item.name() + " needs two values or more, got " + values.size());
        }
        for (int i = 1; i < values.size(); i++) {
            if (!(values.get(i) > values.get(i - 1))) {
                throw new IllegalArgumentException("values of " + item.name() + " must rise, got " + values);
            }
        }
    }
}
