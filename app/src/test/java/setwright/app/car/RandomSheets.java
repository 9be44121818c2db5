package setwright.app.car;

import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupUnit;

/** Car sheets with any value that a key alone allows, and now and then without the key. */
final class RandomSheets {
    private record Key(String name, double least, double most) {}

    private static final List<Key> KEYS = List.of(
            new Key("mass_with_driver_kg", 100, 4000),
            new Key("fuel_start_kg", 0, 300),
            new Key("front_weight_share", 0.2, 0.8),
            new Key("wheelbase_m", 0.8, 5),
            new Key("track_front_m", 0.6, 2.5),
            new Key("track_rear_m", 0.6, 2.5),
            new Key("centre_of_mass_height_m", 0.1, 1.2),
            new Key("tyre_radius_m", 0.1, 0.6),
            new Key("rev_limit_rpm", 1000, 25000),
            new Key("motion_ratio_front", 0.2, 2),
            new Key("motion_ratio_rear", 0.2, 2),
            new Key("roll_centre_height_front_m", -0.3, 0.6),
            new Key("roll_centre_height_rear_m", -0.3, 0.6),
            new Key("unsprung_mass_front_kg", 1, 500),
            new Key("unsprung_mass_rear_kg", 1, 500),
            new Key("tyre_spring_rate_front_N_per_mm", 30, 1500),
            new Key("drag_area_m2", 0.1, 5),
            new Key("engine_power_kW", 3, 1500),
            new Key("driveline_efficiency", 0.5, 1));

    private RandomSheets() {}

    static String next(RandomGenerator random) {
        StringBuilder sheet = new StringBuilder("driven_axle: "
                + List.of("front", "rear", "all").get(random.nextInt(3)) + "\ndownforce: "
                + List.of("none", "moderate", "strong").get(random.nextInt(3)) + "\ngear_ratios: [3, 2, 1]\n");
        for (Key key : KEYS) {
            if (random.nextInt(4) == 0) {
                sheet.append(key.name())
                        .append(": ")
                        .append(value(random, key.least(), key.most()))
                        .append('\n');
            }
        }
        if (random.nextBoolean()) {
            sheet.append("bar_wheel_rate_front_N_per_mm: {base: 5, per_position: ")
                    .append(value(random, -100, 100))
                    .append("}\n");
        }
        sheet.append("setup:\n  other_thing: x\n");
        for (SetupItemKind kind : SetupCatalogue.all()) {
            // what would only contradict something else on the sheet is left out
            boolean isSecond = kind.gear() > 0
                    || kind.family() == SetupFamily.FUEL
                    || kind.name().endsWith("_low")
                    || kind.name().endsWith("_high");
            if (kind.family().isLabel() || isSecond || random.nextInt(3) == 0) {
                continue;
            }
            SetupUnit unit = kind.units().get(random.nextInt(kind.units().size()));
            boolean isUsual = random.nextInt(20) > 0;
            SetupFamily.Range range = isUsual ? kind.usual(unit) : kind.possible(unit);
            sheet.append("  ").append(kind.name()).append(": {value: ");
            sheet.append(value(random, range.least(), range.most()));
            sheet.append(", unit: \"").append(unit.symbol()).append("\"}\n");
        }
        return sheet.toString();
    }

    private static String value(RandomGenerator random, double least, double most) {
        return String.format(Locale.ROOT, "%.4f", random.nextDouble(least, most));
    }
}
