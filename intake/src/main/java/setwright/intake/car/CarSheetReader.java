package setwright.intake.car;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.intake.yaml.YamlFile;
import setwright.intake.yaml.YamlNode;

/**
 * Reads a car sheet: what the user knows, checked against what is possible; what is missing is assumed from the kind of car and
 * listed in {@link CarSheet#assumed()}, each beginning with its key.
 */
public final class CarSheetReader {
    private static final List<String> KEYS = List.of(
            "description",
            "driven_axle",
            "mass_with_driver_kg",
            "fuel_start_kg",
            "front_weight_share",
            "wheelbase_m",
            "track_front_m",
            "track_rear_m",
            "centre_of_mass_height_m",
            "steering_ratio",
            "tyre_radius_m",
            "gear_ratios",
            "rev_limit_rpm",
            "brake_pressure_max_bar",
            "motion_ratio_front",
            "motion_ratio_rear",
            "bar_wheel_rate_front_N_per_mm",
            "bar_wheel_rate_rear_N_per_mm",
            "downforce",
            "setup");
    private static final double RPM_TO_RADPS = Math.PI / 30.0;
    private static final double BAR_TO_PA = 1.0e5;
    private static final double N_PER_MM_TO_N_PER_M = 1.0e3;

    private final SheetKeys keys;
    private final String file;
    private final List<String> assumed = new ArrayList<>();

    private CarSheetReader(String file, YamlNode.Mapping root) {
        this.file = file;
        this.keys = new SheetKeys(file, root, "");
    }

    /**
     * Reads a file.
     *
     * @throws setwright.intake.problem.InputProblem naming the line that is wrong
     */
    public static CarSheet read(Path file) {
        return new CarSheetReader(String.valueOf(file.getFileName()), YamlFile.read(file)).sheet();
    }

    /** Reads text; {@code name} is what messages call it. */
    public static CarSheet parse(String name, String text) {
        return new CarSheetReader(name, YamlFile.parse(name, text)).sheet();
    }

    private CarSheet sheet() {
        keys.allowOnly(KEYS);
        DrivenAxle axle = keys.choice("driven_axle", DrivenAxle.class).orElseGet(() -> {
            assumed.add("driven_axle is not given: a rear-drive car is assumed.");
            return DrivenAxle.REAR;
        });
        Downforce downforce = keys.choice("downforce", Downforce.class).orElseGet(() -> {
            assumed.add("downforce is not given: none is assumed.");
            return Downforce.NONE;
        });
        Archetype kind = Archetype.of(axle, downforce);
        return new CarSheet(
                keys.text("description").orElse(kind.words()),
                axle,
                value("mass_with_driver_kg", 100.0, 4000.0, "kg", kind.massKg(), kind),
                value("fuel_start_kg", 0.0, 300.0, "kg", kind.fuelStartKg(), kind),
                share(kind),
                value("wheelbase_m", 0.8, 5.0, "m", kind.wheelbaseM(), kind),
                value("track_front_m", 0.6, 2.5, "m", kind.trackM(), kind),
                value("track_rear_m", 0.6, 2.5, "m", kind.trackM(), kind),
                value("centre_of_mass_height_m", 0.1, 1.2, "m", kind.centreOfMassHeightM(), kind),
                value("steering_ratio", 1.0, 30.0, "", kind.steeringRatio(), kind),
                value("tyre_radius_m", 0.1, 0.6, "m", kind.tyreRadiusM(), kind),
                gearRatios(),
                scaled(keys.number("rev_limit_rpm", 1000.0, 25000.0, "rpm"), RPM_TO_RADPS),
                scaled(keys.number("brake_pressure_max_bar", 5.0, 300.0, "bar"), BAR_TO_PA),
                value("motion_ratio_front", 0.2, 2.0, "", kind.motionRatio(), kind),
                value("motion_ratio_rear", 0.2, 2.0, "", kind.motionRatio(), kind),
                barRate("bar_wheel_rate_front_N_per_mm"),
                barRate("bar_wheel_rate_rear_N_per_mm"),
                downforce,
                setup(),
                assumed);
    }

    private double value(String key, double least, double most, String unit, double otherwise, Archetype kind) {
        OptionalDouble given = keys.number(key, least, most, unit);
        if (given.isPresent()) {
            return given.getAsDouble();
        }
        assumed.add(key + " is not given: " + SheetKeys.shown(otherwise) + (unit.isEmpty() ? "" : " " + unit)
                + " is assumed, as for " + kind.words() + ".");
        return otherwise;
    }

    private double share(Archetype kind) {
        String key = "front_weight_share";
        Optional<YamlNode> node = keys.node(key);
        if (node.isPresent()) {
            double value = keys.number(key, node.get());
            if (!(value >= 0.2 && value <= 0.8)) {
                throw keys.problem(key, node.get().line())
                        .value(SheetKeys.shown(value))
                        .expected("a share of the weight from 0.2 to 0.8")
                        .advice(value > 1.0 ? "Write 52 % as 0.52." : "Check the scales.")
                        .problem();
            }
        }
        return value(key, 0.2, 0.8, "", kind.frontWeightShare(), kind);
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private List<Double> gearRatios() {
        String key = "gear_ratios";
        List<Double> ratios = new ArrayList<>();
        for (YamlNode item : keys.list(key).map(YamlNode.Sequence::items).orElse(List.of())) {
            double ratio = keys.number(key, item);
            boolean first = ratios.isEmpty();
            if (!(ratio > 0.0 && ratio < 20.0)) {
                throw keys.problem(key, item.line())
                        .value(SheetKeys.shown(ratio))
                        .expected("a ratio above 0 and below 20")
                        .problem();
            }
            if (!first && !(ratio < ratios.get(ratios.size() - 1))) {
                throw keys.problem(key, item.line())
                        .value(SheetKeys.shown(ratio))
                        .expected("ratios that fall from first gear on: less than "
                                + SheetKeys.shown(ratios.get(ratios.size() - 1)) + " here")
                        .advice("Give the gears in the order first to last.")
                        .problem();
            }
            ratios.add(ratio);
        }
        return ratios;
    }

    private Optional<CarSheet.BarRate> barRate(String key) {
        return keys.group(key).map(group -> {
            SheetKeys bar = new SheetKeys(file, group, key + ".");
            bar.allowOnly(List.of("base", "per_position"));
            double base = required(bar, "base", 0.0, 500.0, "N/mm");
            double perPosition = required(bar, "per_position", -100.0, 100.0, "N/mm");
            return new CarSheet.BarRate(base * N_PER_MM_TO_N_PER_M, perPosition * N_PER_MM_TO_N_PER_M);
        });
    }

    private static double required(SheetKeys keys, String key, double least, double most, String unit) {
        return keys.number(key, least, most, unit)
                .orElseThrow(() -> keys.problem(key, keys.line(key))
                        .expected("a number" + (unit.isEmpty() ? "" : " in " + unit))
                        .found("nothing")
                        .advice("Add the key.")
                        .problem());
    }

    private List<SetupItem> setup() {
        List<SetupItem> items = new ArrayList<>();
        Optional<YamlNode.Mapping> group = keys.group("setup");
        if (group.isEmpty()) {
            assumed.add("setup is not given: no change can be proposed without its items, ranges and steps.");
            return items;
        }
        SheetKeys setup = new SheetKeys(file, group.get(), "setup.");
        for (String name : group.get().entries().keySet()) {
            YamlNode.Mapping entry = setup.group(name)
                    .orElseThrow(() -> setup.problem(name, setup.line(name))
                            .expected("value, unit, min, max and step")
                            .found("nothing")
                            .problem());
            items.add(item(name, new SheetKeys(file, entry, "setup." + name + "."), setup.line(name)));
        }
        return items;
    }

    private static SetupItem item(String name, SheetKeys keys, int line) {
        keys.allowOnly(List.of("value", "unit", "min", "max", "step"));
        double far = 1.0e6;
        double value = required(keys, "value", -far, far, "");
        double min = required(keys, "min", -far, far, "");
        double max = required(keys, "max", -far, far, "");
        double step = required(keys, "step", -far, far, "");
        if (min > max) {
            throw keys.problem("min", line)
                    .value(SheetKeys.shown(min))
                    .expected("at most max, which is " + SheetKeys.shown(max))
                    .advice("Swap them.")
                    .problem();
        }
        if (!(step > 0.0)) {
            throw keys.problem("step", line)
                    .value(SheetKeys.shown(step))
                    .expected("a step above 0")
                    .problem();
        }
        if (value < min || value > max) {
            throw keys.problem("value", line)
                    .value(SheetKeys.shown(value))
                    .expected("a value from min " + SheetKeys.shown(min) + " to max " + SheetKeys.shown(max))
                    .advice("Correct the value or the range.")
                    .problem();
        }
        return new SetupItem(name, value, keys.text("unit").orElse(""), min, max, step);
    }
}
