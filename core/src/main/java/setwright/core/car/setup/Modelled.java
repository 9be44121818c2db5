package setwright.core.car.setup;

import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.CarSheet.BarRate;
import setwright.core.car.SetupItem;

/**
 * Which items of a car the model can turn. Others would come out as "changes nothing", which nobody knows.
 *
 * @param car  its sheet
 */
public record Modelled(CarSheet car) {

    /** Returns why a change of this item cannot be predicted, and what would help; empty when it can. */
    public Optional<String> obstacle(SetupItem item) {
        String name = item.name();
        if (name.startsWith(SetupCatalogue.NOT_MODELLED)) {
            return Optional.of("what " + name + " does to a car is not modelled, so nothing can be predicted of it");
        }
        return switch (name) {
            case "front_bar" -> bar(name, "bar_wheel_rate_front_N_per_mm", car.barFront());
            case "rear_bar" -> bar(name, "bar_wheel_rate_rear_N_per_mm", car.barRear());
            default -> Optional.empty();
        };
    }

    private static Optional<String> bar(String name, String key, Optional<BarRate> rate) {
        if (rate.filter(known -> known.perPositionNPerM() != 0.0).isPresent()) {
            return Optional.empty();
        }
        return Optional.of("a position of " + name + " says nothing of its stiffness. Give " + key
                + ", such as {base: 9.0, per_position: 3.6}");
    }
}
