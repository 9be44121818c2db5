package setwright.app.world;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.intake.problem.InputProblem;
import setwright.intake.yaml.Spelling;
import setwright.intake.yaml.YamlNode;

/** Reads the keys of one group of a file of the world; each message names the line. */
record Keys(String file, YamlNode.Mapping group) {

    void allowOnly(List<String> known) {
        for (Map.Entry<String, YamlNode.Entry> item : group.entries().entrySet()) {
            if (!known.contains(item.getKey())) {
                throw InputProblem.in(file)
                        .row(item.getValue().keyLine())
                        .column(item.getKey())
                        .expected("one of " + String.join(", ", known))
                        .found("none of them")
                        .advice(Spelling.nearest(item.getKey(), known)
                                .map(word -> "Did you mean '" + word + "'?")
                                .orElse("Remove it."))
                        .problem();
            }
        }
    }

    boolean has(String key) {
        return group.entries().containsKey(key);
    }

    List<String> names() {
        return List.copyOf(group.entries().keySet());
    }

    String text(String key) {
        if (node(key) instanceof YamlNode.Scalar scalar) {
            return scalar.text();
        }
        throw wrong(key, "a word");
    }

    double number(String key) {
        return number(key, node(key));
    }

    double number(String key, YamlNode node) {
        if (node instanceof YamlNode.Scalar scalar) {
            try {
                double value = Double.parseDouble(scalar.text());
                if (Double.isFinite(value)) {
                    return value;
                }
            } catch (NumberFormatException e) {
                throw InputProblem.in(file)
                        .row(scalar.line())
                        .column(key)
                        .value(scalar.text())
                        .expected("a number")
                        .causedBy(e);
            }
        }
        throw wrong(key, "a number");
    }

    Keys group(String key) {
        if (node(key) instanceof YamlNode.Mapping mapping) {
            return new Keys(file, mapping);
        }
        throw wrong(key, "a group of keys");
    }

    /** The groups of a list. */
    List<Keys> groups(String key) {
        List<Keys> groups = new ArrayList<>();
        for (YamlNode item : items(key)) {
            if (!(item instanceof YamlNode.Mapping mapping)) {
                throw wrong(key, "a list of groups");
            }
            groups.add(new Keys(file, mapping));
        }
        return groups;
    }

    /** The words of a list. */
    List<String> words(String key) {
        List<String> words = new ArrayList<>();
        for (YamlNode item : items(key)) {
            if (!(item instanceof YamlNode.Scalar scalar)) {
                throw wrong(key, "a list of words");
            }
            words.add(scalar.text());
        }
        return words;
    }

    InputProblem wrong(String key, String expected) {
        YamlNode.Entry entry = group.entries().get(key);
        return InputProblem.in(file)
                .row(entry == null ? group.line() : entry.node().line())
                .column(key)
                .expected(expected)
                .found(entry == null ? "nothing" : entry.node().kind())
                .problem();
    }

    private List<YamlNode> items(String key) {
        if (node(key) instanceof YamlNode.Sequence sequence) {
            return sequence.items();
        }
        throw wrong(key, "a list");
    }

    private YamlNode node(String key) {
        return Optional.ofNullable(group.entries().get(key))
                .map(YamlNode.Entry::node)
                .orElseThrow(() -> wrong(key, "a value"));
    }
}
