package setwright.intake.car;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import setwright.intake.yaml.YamlFile;
import setwright.intake.yaml.YamlNode;
import setwright.intake.yaml.YamlPlace;

/**
 * A car sheet as its owner wrote it: changed where a value changes, else left alone, with its comments and its order.
 *
 * @param text  YAML
 */
public record SheetText(String text) {
    private static final String SETUP = "setup";
    private static final String VALUE = "value";
    private static final String FUEL = "fuel_start_kg";
    /** Longer numbers are no settings; writing them out could fill the memory. */
    private static final int LONGEST_NUMBER = 40;

    /**
     * A value that two sheets do not have alike.
     *
     * @param key   of the sheet, with dots between levels; an item of the setup stands for its value
     * @param from  on the first sheet; empty when it lacks the key
     * @param to    on the second
     * @param set   whether it is what the setup is set to; else it is a fact of the car, or what an item allows
     */
    public record Difference(String key, String from, String to, boolean set) {}

    /**
     * Returns the sheet with an item of its setup at another value.
     *
     * @param item   that the sheet has, with a value or as a word
     * @param value  as it is to be written
     * @throws IllegalArgumentException when the sheet has no such item
     */
    public SheetText with(String item, String value) {
        return new SheetText(YamlPlace.of(text, List.of(SETUP, item, VALUE))
                .or(() -> YamlPlace.of(text, List.of(SETUP, item)))
                .orElseThrow(() -> new IllegalArgumentException("the sheet has no setup item " + item))
                .replaced(value));
    }

    /** Returns what another sheet has otherwise, whatever it looks like: first the facts of the car, then the setup. */
    public List<Difference> to(SheetText other) {
        Map<String, String> mine = leaves();
        Map<String, String> others = other.leaves();
        TreeSet<String> keys = new TreeSet<>(mine.keySet());
        keys.addAll(others.keySet());
        return keys.stream()
                .filter(key -> !mine.getOrDefault(key, "").equals(others.getOrDefault(key, "")))
                .sorted(Comparator.comparing((String key) -> key.startsWith(SETUP + ".")))
                .map(key ->
                        new Difference(plain(key), mine.getOrDefault(key, ""), others.getOrDefault(key, ""), set(key)))
                .toList();
    }

    /** An item's value, an item that is a word, or the fuel of a run. */
    private static boolean set(String key) {
        boolean inSetup = key.startsWith(SETUP + ".");
        boolean value = key.endsWith("." + VALUE) || key.indexOf('.', SETUP.length() + 1) < 0;
        return key.equals(FUEL) || (inSetup && value);
    }

    private static String plain(String key) {
        String place = key.startsWith(SETUP + ".") ? key.substring(SETUP.length() + 1) : key;
        return place.endsWith("." + VALUE) ? place.substring(0, place.length() - VALUE.length() - 1) : place;
    }

    private Map<String, String> leaves() {
        Map<String, String> leaves = new LinkedHashMap<>();
        Deque<Map.Entry<String, YamlNode>> open = new ArrayDeque<>();
        open.add(Map.entry("", YamlFile.parse("car sheet", text)));
        while (!open.isEmpty()) {
            Map.Entry<String, YamlNode> next = open.removeFirst();
            String key = next.getKey();
            String within = key.isEmpty() ? "" : key + ".";
            if (next.getValue() instanceof YamlNode.Mapping mapping) {
                mapping.entries().forEach((name, entry) -> open.add(Map.entry(within + name, entry.node())));
            } else if (next.getValue() instanceof YamlNode.Sequence sequence) {
                for (int i = 0; i < sequence.items().size(); i++) {
                    open.add(Map.entry(within + (i + 1), sequence.items().get(i)));
                }
            } else if (next.getValue() instanceof YamlNode.Scalar scalar) {
                leaves.put(key, number(scalar.text()));
            }
        }
        return leaves;
    }

    /** 4, 4.0 and 4e0 are one number. */
    private static String number(String text) {
        if (text.length() > LONGEST_NUMBER) {
            return text;
        }
        try {
            BigDecimal value = new BigDecimal(text).stripTrailingZeros();
            return Math.abs(value.scale()) > LONGEST_NUMBER ? text : value.toPlainString();
        } catch (NumberFormatException e) {
            return text;
        }
    }
}
