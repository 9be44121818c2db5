package setwright.app.world;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;

/**
 * A made-up series and its rules.
 *
 * @param name                what people call it
 * @param circuits            short names
 * @param tyreSetsPerWeekend  how many sets a car may use
 * @param classes             by name
 */
public record Series(String name, List<String> circuits, int tyreSetsPerWeekend, Map<String, CarClass> classes) {

    public Series {
        circuits = List.copyOf(circuits);
        classes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(classes));
    }

    /**
     * A class of cars.
     *
     * @param cars           short names
     * @param minimumMassKg  with driver, without fuel, kg
     * @param tyresPerSet    how many tyres a set has
     * @param fixed          items that must stay as delivered
     * @param items          what an item may be; others are free within what the car's parts allow
     */
    public record CarClass(
            List<String> cars, double minimumMassKg, int tyresPerSet, List<String> fixed, Map<String, Allowed> items) {
        public CarClass {
            cars = List.copyOf(cars);
            fixed = List.copyOf(fixed);
            items = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(items));
        }

        /** Returns what about a sheet breaks the rules, each in a sentence; none when nothing does. */
        public List<String> breaches(CarSheet sheet) {
            List<String> breaches = new ArrayList<>();
            if (sheet.massKg() < minimumMassKg) {
                breaches.add("mass_with_driver_kg is " + sheet.massKg() + "; the class asks for " + minimumMassKg
                        + " kg at least.");
            }
            items.forEach((name, allowed) -> sheet.item(name)
                    .filter(item -> !allowed.admits(item))
                    .ifPresent(item -> breaches.add(name + " is " + item.value() + " " + item.unit() + " within "
                            + item.min() + " to " + item.max() + "; the class allows " + allowed.min() + " to "
                            + allowed.max() + " " + allowed.unit() + " in steps of " + allowed.step() + ".")));
            return breaches;
        }
    }

    /**
     * What an item may be.
     *
     * @param min   least
     * @param max   greatest
     * @param step  smallest change
     * @param unit  of the three
     */
    public record Allowed(double min, double max, double step, String unit) {
        private static final double ROUNDING = 1.0e-9;

        boolean admits(SetupItem item) {
            double steps = item.step() / step;
            return item.unit().equals(unit)
                    && item.min() >= min - ROUNDING
                    && item.max() <= max + ROUNDING
                    && item.value() >= min - ROUNDING
                    && item.value() <= max + ROUNDING
                    && Math.abs(steps - Math.rint(steps)) < ROUNDING;
        }
    }
}
