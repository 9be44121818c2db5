package setwright.intake.car;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.core.car.CarSheet;
import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupItemKind;
import setwright.intake.yaml.YamlFile;
import setwright.intake.yaml.YamlNode;

/**
 * Reads a car sheet: what the user knows, checked against what is possible; what is missing is assumed from the kind of car and
 * listed in {@link CarSheet#assumed()}, each beginning with its key.
 */
public final class CarSheetReader {
    private static final String SETUP = "setup";
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
            SETUP);
    private static final double RPM_TO_RADPS = Math.PI / 30.0;
    private static final double BAR_TO_PA = 1.0e5;
    private static final double N_PER_MM_TO_N_PER_M = 1.0e3;

    private final SheetKeys keys;
    private final List<String> assumed = new ArrayList<>();

    private CarSheetReader(String file, YamlNode.Mapping root) {
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

    /** Returns a sheet that gives nothing: every value is assumed. */
    public static CarSheet nothingKnown() {
        return parse("car sheet", "{}");
    }

    /** All keys of a sheet. */
    static List<String> keys() {
        return Stream.concat(KEYS.stream(), DetailReader.KEYS.stream()).toList();
    }

    private CarSheet sheet() {
        keys.allowOnly(keys());
        DrivenAxle axle = keys.choice("driven_axle", DrivenAxle.class).orElseGet(() -> {
            assumed.add("driven_axle is not given: a rear-drive car is assumed.");
            return DrivenAxle.REAR;
        });
        Downforce downforce = keys.choice("downforce", Downforce.class).orElseGet(() -> {
            assumed.add("downforce is not given: none is assumed.");
            return Downforce.NONE;
        });
        Archetype kind = Archetype.of(axle, downforce);
        Optional<SetupReader> setup = setup();
        List<SetupItem> items = setup.map(SetupReader::items).orElse(List.of());
        CarSheet sheet = new CarSheet(
                keys.text("description").orElse(kind.words()),
                axle,
                value("mass_with_driver_kg", 100.0, 4000.0, "kg", kind.massKg(), kind),
                fuelStart(items, kind),
                share(kind),
                value("wheelbase_m", 0.8, 5.0, "m", kind.wheelbaseM(), kind),
                value("track_front_m", 0.6, 2.5, "m", kind.trackM(), kind),
                value("track_rear_m", 0.6, 2.5, "m", kind.trackM(), kind),
                value("centre_of_mass_height_m", 0.1, 1.2, "m", kind.centreOfMassHeightM(), kind),
                value("steering_ratio", 1.0, 30.0, "", kind.steeringRatio(), kind),
                value("tyre_radius_m", 0.1, 0.6, "m", kind.tyreRadiusM(), kind),
                gearRatios(items),
                scaled(keys.number("rev_limit_rpm", 1000.0, 25000.0, "rpm"), RPM_TO_RADPS),
                scaled(keys.number("brake_pressure_max_bar", 5.0, 300.0, "bar"), BAR_TO_PA),
                value("motion_ratio_front", 0.2, 2.0, "", kind.motionRatio(), kind),
                value("motion_ratio_rear", 0.2, 2.0, "", kind.motionRatio(), kind),
                barRate("bar_wheel_rate_front_N_per_mm"),
                barRate("bar_wheel_rate_rear_N_per_mm"),
                downforce,
                new DetailReader(keys).read(),
                items,
                setup.map(SetupReader::labels).orElse(List.of()),
                assumed);
        new SheetLaws(keys, sheet).check();
        return sheet;
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

    private double fuelStart(List<SetupItem> items, Archetype kind) {
        String key = "fuel_start_kg";
        OptionalDouble item = si(items, SetupCatalogue.of(SetupFamily.FUEL));
        return item.isPresent() && keys.node(key).isEmpty()
                ? item.getAsDouble()
                : value(key, 0.0, 300.0, "kg", kind.fuelStartKg(), kind);
    }

    private static OptionalDouble si(List<SetupItem> items, SetupItemKind kind) {
        return items.stream()
                .filter(item -> item.name().equals(kind.name()))
                .mapToDouble(kind::toSi)
                .findFirst();
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private List<Double> gearRatios(List<SetupItem> items) {
        String key = "gear_ratios";
        List<Double> ratios = new ArrayList<>();
        if (keys.node(key).isEmpty()) {
            SetupCatalogue.all().stream()
                    .filter(kind -> kind.family() == SetupFamily.GEAR)
                    .forEach(kind -> si(items, kind).ifPresent(ratios::add));
            return ratios;
        }
        for (YamlNode item : keys.list(key).map(YamlNode.Sequence::items).orElse(List.of())) {
            double ratio = keys.number(key, item);
            boolean first = ratios.isEmpty();
            if (!(ratio > 0.0 && ratio < 20.0)) {
                throw keys.problem(key, item.line())
                        .value(SheetKeys.shown(ratio))
                        .expected("a ratio above 0 and below 20")
                        .advice("It is engine side over wheel side.")
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
            SheetKeys bar = keys.inside(key, group);
            bar.allowOnly(List.of("base", "per_position"));
            double base = bar.required("base", 0.0, 500.0, "N/mm");
            double perPosition = bar.required("per_position", -100.0, 100.0, "N/mm");
            return new CarSheet.BarRate(base * N_PER_MM_TO_N_PER_M, perPosition * N_PER_MM_TO_N_PER_M);
        });
    }

    private Optional<SetupReader> setup() {
        Optional<YamlNode.Mapping> group = keys.group(SETUP);
        if (group.isEmpty()) {
            assumed.add("setup is not given: no change can be proposed without its items, ranges and steps.");
        }
        return group.map(items -> new SetupReader(keys.inside(SETUP, items), assumed));
    }
}
