package setwright.intake.yaml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * Where a value stands in a YAML text.
 *
 * @param text  whole
 * @param from  first character of the value, counted from 0
 * @param to    behind its last
 */
public record YamlPlace(String text, int from, int to) {

    /**
     * Finds a value.
     *
     * @param text  that {@link YamlFile} reads
     * @param path  names of the levels, outermost first
     * @return empty where there is none, or where it is a group or a list
     */
    public static Optional<YamlPlace> of(String text, List<String> path) {
        String quoted = YamlFile.quoted(text);
        Deque<String> here = new ArrayDeque<>();
        try (JsonParser parser = new YAMLFactory().createParser(tools.jackson.core.ObjectReadContext.empty(), quoted)) {
            int lists = 0;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.START_ARRAY) {
                    lists++;
                } else if (token == JsonToken.END_ARRAY) {
                    lists--;
                } else if (lists == 0 && token == JsonToken.START_OBJECT) {
                    here.addLast("");
                } else if (lists == 0 && token == JsonToken.END_OBJECT) {
                    here.removeLast();
                } else if (lists == 0 && token == JsonToken.PROPERTY_NAME) {
                    here.removeLast();
                    here.addLast(parser.currentName());
                } else if (lists == 0
                        && token.isScalarValue()
                        && List.copyOf(here).equals(path)) {
                    return Optional.of(new YamlPlace(
                            quoted,
                            index(quoted, parser.currentTokenLocation().getCharOffset()),
                            index(quoted, parser.currentLocation().getCharOffset())));
                }
            }
        }
        return Optional.empty();
    }

    /** The parser counts characters beyond the first 65,536 as one, text as two. */
    private static int index(String text, long offset) {
        return text.offsetByCodePoints(0, (int) offset);
    }

    /** Returns the text with another value in this place. */
    public String replaced(String value) {
        return text.substring(0, from) + value + text.substring(to);
    }
}
