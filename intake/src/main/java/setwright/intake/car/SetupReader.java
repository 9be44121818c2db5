package setwright.intake.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import setwright.core.car.SetupItem;
import setwright.core.car.SetupLabel;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupFamily;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.setup.SetupUnit;
import setwright.intake.problem.InputProblem;
import setwright.intake.yaml.Spelling;
import setwright.intake.yaml.YamlNode;

/** Reads the adjustable items of a sheet against the catalogue. */
final class SetupReader {
    private static final double FAR = 1.0e6;
    private static final List<String> NUMBER_KEYS = List.of("value", "unit", "min", "max", "step");
    private static final List<String> LABEL_KEYS = List.of("value", "choices");

    private final SheetKeys setup;
    private final List<String> assumed;
    private final List<SetupItem> items = new ArrayList<>();
    private final List<SetupLabel> labels = new ArrayList<>();

    /**
     * Reads all items.
     *
     * @param setup    the group of the sheet
     * @param assumed  takes a sentence for what an item does not give
     */
    SetupReader(SheetKeys setup, List<String> assumed) {
        this.setup = setup;
        this.assumed = assumed;
        for (String name : setup.mapping().entries().keySet()) {
            read(name);
        }
    }

    List<SetupItem> items() {
        return List.copyOf(items);
    }

    List<SetupLabel> labels() {
        return List.copyOf(labels);
    }

    private void read(String name) {
        Optional<SetupItemKind> kind = SetupCatalogue.find(name);
        if (kind.isEmpty() && !name.startsWith(SetupCatalogue.NOT_MODELLED)) {
            throw unknown(name);
        }
        boolean isWord =
                setup.node(name).map(node -> node instanceof YamlNode.Scalar).orElse(false);
        if (kind.map(k -> k.family().isLabel()).orElse(isWord)) {
            labels.add(label(name));
            return;
        }
        SheetKeys keys = setup.group(name)
                .map(group -> setup.inside(name, group))
                .orElseThrow(() -> setup.problem(name, setup.line(name))
                        .expected("value, unit, min, max and step")
                        .found("nothing")
                        .advice("Write it as {value: 4, unit: position, min: 1, max: 9, step: 1}.")
                        .problem());
        keys.allowOnly(NUMBER_KEYS);
        items.add(kind.isPresent() ? known(name, keys, kind.get()) : unmodelled(name, keys));
    }

    private InputProblem unknown(String name) {
        String instead = Spelling.nearest(name, SetupCatalogue.names())
                .map(word -> "Did you mean '" + word + "'?")
                .orElse("Known are: "
                        + SetupCatalogue.all().stream()
                                .map(k -> k.name().replaceFirst("_\\d$", "_1"))
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + ".");
        return setup.problem(name, setup.line(name))
                .expected("a known setup item")
                .found("one that is none")
                .advice(instead + " A name that begins with '" + SetupCatalogue.NOT_MODELLED
                        + "' is kept without being modelled.")
                .problem();
    }

    private SetupLabel label(String name) {
        Optional<YamlNode> node = setup.node(name);
        if (node.isPresent() && node.get() instanceof YamlNode.Mapping group) {
            SheetKeys keys = setup.inside(name, group);
            keys.allowOnly(LABEL_KEYS);
            String value = keys.text("value").orElseThrow(() -> needsWord(name));
            List<String> choices = new ArrayList<>();
            for (YamlNode choice :
                    keys.list("choices").map(YamlNode.Sequence::items).orElse(List.of())) {
                if (!(choice instanceof YamlNode.Scalar word) || word.text().isEmpty()) {
                    throw keys.problem("choices", choice.line())
                            .expected("words")
                            .found(choice.kind())
                            .problem();
                }
                choices.add(word.text());
            }
            if (!choices.isEmpty() && !choices.contains(value)) {
                throw keys.problem("value", keys.line("value"))
                        .value(value)
                        .expected("one of its choices " + String.join(", ", choices))
                        .advice("Correct the value or add it to the choices.")
                        .problem();
            }
            return new SetupLabel(name, value, choices);
        }
        return new SetupLabel(name, setup.text(name).orElseThrow(() -> needsWord(name)), List.of());
    }

    private InputProblem needsWord(String name) {
        return setup.problem(name, setup.line(name))
                .expected("a word, such as soft")
                .found("nothing")
                .advice("Name the compound.")
                .problem();
    }

    private SetupItem unmodelled(String name, SheetKeys keys) {
        double value = keys.required("value", -FAR, FAR, "");
        double min = keys.required("min", -FAR, FAR, "");
        double max = keys.required("max", -FAR, FAR, "");
        double step = keys.required("step", -FAR, FAR, "");
        return checked(name, keys, keys.text("unit").orElse(""), value, min, max, step);
    }

    private SetupItem known(String name, SheetKeys keys, SetupItemKind kind) {
        SetupUnit unit = unit(keys, kind);
        SetupFamily.Range possible = kind.possible(unit);
        double value = within(keys, "value", possible, kind, unit)
                .orElseThrow(() -> keys.problem("value", keys.line("value"))
                        .expected("a number in " + unit.symbol())
                        .found("nothing")
                        .advice("Add the key.")
                        .problem());
        OptionalDouble min = within(keys, "min", possible, kind, unit);
        OptionalDouble max = within(keys, "max", possible, kind, unit);
        OptionalDouble step = keys.number("step", -FAR, FAR, "");
        // a range that is not given is the usual one, stretched to hold what is given
        double least = min.orElse(Math.min(kind.usual(unit).least(), Math.min(value, max.orElse(value))));
        double most = max.orElse(Math.max(kind.usual(unit).most(), Math.max(value, least)));
        SetupItem item = checked(name, keys, unit.symbol(), value, least, most, step.orElse(kind.usualStep(unit)));
        tellAssumed(kind, keys, item);
        return item;
    }

    private void tellAssumed(SetupItemKind kind, SheetKeys keys, SetupItem item) {
        List<String> missing = List.of("unit", "min", "max", "step").stream()
                .filter(key -> keys.node(key).isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            assumed.add("setup." + item.name() + " lacks " + String.join(", ", missing) + ": "
                    + SheetKeys.shown(item.min()) + " to " + SheetKeys.shown(item.max()) + " " + item.unit()
                    + " in steps of " + SheetKeys.shown(item.step()) + " is assumed, as is usual for " + kind.words()
                    + ".");
        }
    }

    private static SetupUnit unit(SheetKeys keys, SetupItemKind kind) {
        Optional<String> text = keys.text("unit");
        List<String> symbols = kind.units().stream().map(SetupUnit::symbol).toList();
        if (text.isEmpty()) {
            return kind.units().get(0);
        }
        return kind.unit(text.get())
                .orElseThrow(() -> keys.problem("unit", keys.line("unit"))
                        .value(text.get())
                        .expected("one of the units " + String.join(", ", symbols))
                        .advice(Spelling.nearest(text.get(), symbols)
                                .map(word -> "Did you mean '" + word + "'?")
                                .orElse("Usual is " + symbols.get(0) + "."))
                        .problem());
    }

    private static OptionalDouble within(
            SheetKeys keys, String key, SetupFamily.Range possible, SetupItemKind kind, SetupUnit unit) {
        OptionalDouble value = keys.number(key, -FAR, FAR, "");
        if (value.isPresent() && !(value.getAsDouble() >= possible.least() && value.getAsDouble() <= possible.most())) {
            throw keys.problem(key, keys.line(key))
                    .value(SheetKeys.shown(value.getAsDouble()))
                    .expected(kind.words() + " from " + SheetKeys.shown(possible.least()) + " to "
                            + SheetKeys.shown(possible.most()) + " " + unit.symbol())
                    .advice(advice(kind.family()))
                    .problem();
        }
        return value;
    }

    private static String advice(SetupFamily family) {
        return switch (family) {
            case RIDE_HEIGHT -> "It is counted upward from the ground to the floor.";
            case BRAKE_BIAS_FRONT, DIFF_POWER_LOCK, DIFF_COAST_LOCK -> "It is a share of the whole.";
            case FINAL_DRIVE, GEAR -> "It is engine side over wheel side.";
            case TYRE_PRESSURE -> "It is the pressure above that of the air around.";
            case CAMBER -> "Negative leans the top of the wheel inward.";
            case TOE -> "It is the angle of one wheel, toe-in positive.";
            default -> "Check the figure and its unit.";
        };
    }

    private static SetupItem checked(
            String name, SheetKeys keys, String unit, double value, double min, double max, double step) {
        if (min > max) {
            throw keys.problem("min", keys.line("min"))
                    .value(SheetKeys.shown(min))
                    .expected("at most max, which is " + SheetKeys.shown(max))
                    .advice("Swap them.")
                    .problem();
        }
        if (!(step > 0.0)) {
            throw keys.problem("step", keys.line("step"))
                    .value(SheetKeys.shown(step))
                    .expected("a step above 0")
                    .advice("Give the smallest change that can be made.")
                    .problem();
        }
        if (max > min && step > (max - min) * (1.0 + 1.0e-9)) {
            throw keys.problem("step", keys.line("step"))
                    .value(SheetKeys.shown(step))
                    .expected("a step no larger than the range from " + SheetKeys.shown(min) + " to "
                            + SheetKeys.shown(max))
                    .advice("Give the smallest change that can be made.")
                    .problem();
        }
        if (value < min || value > max) {
            throw keys.problem("value", keys.line("value"))
                    .value(SheetKeys.shown(value))
                    .expected("a value from min " + SheetKeys.shown(min) + " to max " + SheetKeys.shown(max))
                    .advice("Correct the value or the range.")
                    .problem();
        }
        return new SetupItem(name, value, unit, min, max, step);
    }
}
