package setwright.intake.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One node of a YAML document, with the line where it begins (counted from 1). */
public sealed interface YamlNode {
    /** Returns the line where the node begins, counted from 1. */
    int line();

    /** Returns what kind of thing it is, for a message. */
    String kind();

    /** A single value, as written; empty when nothing stands there. */
    record Scalar(String text, int line) implements YamlNode {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "the value \"" + text + '"';
        }
    }

    /** A list of nodes. */
    record Sequence(List<YamlNode> items, int line) implements YamlNode {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** Keys with nodes, in the order of the file. */
    record Mapping(Map<String, Entry> entries, int line) implements YamlNode {
        public Mapping {
            entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    /** A key's node and the line of the key. */
    record Entry(YamlNode node, int keyLine) {}
}
