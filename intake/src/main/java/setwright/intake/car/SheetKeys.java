package setwright.intake.car;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.intake.problem.InputProblem;
import setwright.intake.yaml.Spelling;
import setwright.intake.yaml.YamlNode;

/** Reads single keys of a group, and says which line is wrong when one is. */
final class SheetKeys {
    private final String file;
    private final YamlNode.Mapping group;
    private final String prefix;

    SheetKeys(String file, YamlNode.Mapping group, String prefix) {
        this.file = file;
        this.group = group;
        this.prefix = prefix;
    }

    /** Refuses keys that are not known, with a suggestion. */
    void allowOnly(List<String> known) {
        for (Map.Entry<String, YamlNode.Entry> item : group.entries().entrySet()) {
            if (!known.contains(item.getKey())) {
                Optional<String> nearest = Spelling.nearest(item.getKey(), known);
                throw problem(item.getKey(), item.getValue().keyLine())
                        .expected("a known key")
                        .found("one that is none")
                        .advice(nearest.map(word -> "Did you mean '" + word + "'?")
                                .orElse("Known are: " + String.join(", ", known) + "."))
                        .problem();
            }
        }
    }

    /** The keys of a group that stands under one of these keys. */
    SheetKeys inside(String key, YamlNode.Mapping group) {
        return new SheetKeys(file, group, prefix + key + ".");
    }

    InputProblem.Builder problem(String key, int line) {
        return InputProblem.in(file).row(line).column(prefix + key);
    }

    Optional<YamlNode> node(String key) {
        return Optional.ofNullable(group.entries().get(key))
                .map(YamlNode.Entry::node)
                .filter(node -> !isEmpty(node));
    }

    /** Line of a key, or of the group when it is missing. */
    int line(String key) {
        return Optional.ofNullable(group.entries().get(key))
                .map(YamlNode.Entry::keyLine)
                .orElse(group.line());
    }

    private static boolean isEmpty(YamlNode node) {
        return node instanceof YamlNode.Scalar scalar && scalar.text().isEmpty();
    }

    Optional<String> text(String key) {
        return node(key).map(node -> {
            if (node instanceof YamlNode.Scalar scalar) {
                return scalar.text();
            }
            throw problem(key, node.line())
                    .expected("a word")
                    .found(node.kind())
                    .problem();
        });
    }

    /** A finite number in a range, both ends allowed. */
    OptionalDouble number(String key, double least, double most, String unit) {
        Optional<YamlNode> node = node(key);
        if (node.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = number(key, node.get());
        if (!(value >= least && value <= most)) {
            throw problem(key, node.get().line())
                    .value(shown(value))
                    .expected(
                            "a value from " + shown(least) + " to " + shown(most) + (unit.isEmpty() ? "" : " " + unit))
                    .advice("Check the unit.")
                    .problem();
        }
        return OptionalDouble.of(value);
    }

    /** A number that must be there, in a range. */
    double required(String key, double least, double most, String unit) {
        return number(key, least, most, unit)
                .orElseThrow(() -> problem(key, line(key))
                        .expected("a number" + (unit.isEmpty() ? "" : " in " + unit))
                        .found("nothing")
                        .advice("Add the key.")
                        .problem());
    }

    double number(String key, YamlNode node) {
        if (node instanceof YamlNode.Scalar scalar) {
            try {
                double value = Double.parseDouble(scalar.text());
                if (Double.isFinite(value)) {
                    return value;
                }
            } catch (NumberFormatException e) {
                throw problem(key, node.line())
                        .value(scalar.text())
                        .expected("a number")
                        .advice("Write the figure alone, with a decimal point and without its unit.")
                        .causedBy(e);
            }
        }
        throw problem(key, node.line()).expected("a number").found(node.kind()).problem();
    }

    <E extends Enum<E>> Optional<E> choice(String key, Class<E> type) {
        return text(key).map(text -> {
            List<String> known = java.util.Arrays.stream(type.getEnumConstants())
                    .map(value -> value.name().toLowerCase(java.util.Locale.ROOT))
                    .toList();
            int index = known.indexOf(text.toLowerCase(java.util.Locale.ROOT));
            if (index < 0) {
                throw problem(key, line(key))
                        .value(text)
                        .expected("one of " + String.join(", ", known))
                        .problem();
            }
            return type.getEnumConstants()[index];
        });
    }

    Optional<YamlNode.Mapping> group(String key) {
        return node(key).map(node -> {
            if (node instanceof YamlNode.Mapping mapping) {
                return mapping;
            }
            throw problem(key, node.line())
                    .expected("a group of keys")
                    .found(node.kind())
                    .problem();
        });
    }

    Optional<YamlNode.Sequence> list(String key) {
        return node(key).map(node -> {
            if (node instanceof YamlNode.Sequence sequence) {
                return sequence;
            }
            throw problem(key, node.line())
                    .expected("a list")
                    .found(node.kind())
                    .problem();
        });
    }

    YamlNode.Mapping mapping() {
        return group;
    }

    static String shown(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1.0e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
