package setwright.intake.yaml;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import setwright.intake.problem.InputProblem;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads YAML into {@link YamlNode}s. Only plain trees are accepted: anchors, aliases and tags are refused, so that a small file
 * can neither grow without bound nor ask for anything to be built.
 */
public final class YamlFile {
    private static final long LARGEST_BYTES = 1 << 20;
    private static final int DEEPEST = 20;

    /** A per cent sign alone, as people write it for a unit; YAML proper wants it in quotes. */
    private static final Pattern BARE_PERCENT = Pattern.compile("(?m)(?<=[:,\\[{-]\\s{1,8})%(?=\\s*(?:[,}\\]#]|$))");

    private final String name;
    private final JsonParser parser;

    private YamlFile(String name, JsonParser parser) {
        this.name = name;
        this.parser = parser;
    }

    /**
     * Reads a file whose top level is a group of keys.
     *
     * @throws InputProblem when it is missing, too large, not YAML, or not a group of keys
     */
    public static YamlNode.Mapping read(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.isDirectory(file)) {
                throw InputProblem.in(name)
                        .expected("a YAML file")
                        .found("a folder")
                        .problem();
            }
            if (Files.size(file) > LARGEST_BYTES) {
                throw InputProblem.in(name)
                        .expected("a YAML file of at most 1 MB")
                        .found(Files.size(file) + " bytes")
                        .advice("Is this the right file?")
                        .problem();
            }
            return parse(name, Files.readString(file, StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            throw InputProblem.in(name)
                    .expected("a file of that name")
                    .found("none")
                    .advice("Check the path.")
                    .causedBy(e);
        } catch (CharacterCodingException e) {
            throw InputProblem.in(name)
                    .expected("text in UTF-8")
                    .found("other bytes")
                    .advice("Save the file as UTF-8 text.")
                    .causedBy(e);
        } catch (IOException e) {
            throw InputProblem.in(name)
                    .expected("a readable file")
                    .found(e.getClass().getSimpleName())
                    .advice("Check its permissions and the disk.")
                    .causedBy(e);
        }
    }

    /** Reads text whose top level is a group of keys; {@code name} is what messages call it. */
    public static YamlNode.Mapping parse(String name, String text) {
        try (JsonParser parser =
                new YAMLFactory().createParser(tools.jackson.core.ObjectReadContext.empty(), quoted(text))) {
            YamlFile file = new YamlFile(name, parser);
            if (parser.nextToken() == null) {
                throw InputProblem.in(name)
                        .expected("keys and values in YAML")
                        .found("an empty file")
                        .problem();
            }
            YamlNode root = file.node(0);
            if (root instanceof YamlNode.Mapping mapping) {
                return mapping;
            }
            throw InputProblem.in(name)
                    .row(root.line())
                    .expected("keys and values in YAML")
                    .found(root.kind())
                    .problem();
        } catch (JacksonException e) {
            TokenStreamLocation place = e.getLocation();
            throw InputProblem.in(name)
                    .row(place == null ? 0 : Math.max(1, place.getLineNr()))
                    .expected("keys and values in YAML")
                    .found("a line that is none (" + firstLine(e.getOriginalMessage()) + ")")
                    .advice("Check indentation, colons and brackets.")
                    .causedBy(e);
        }
    }

    /** Returns the text as YAML proper has it. */
    static String quoted(String text) {
        return BARE_PERCENT.matcher(text).replaceAll("\"%\"");
    }

    private static String firstLine(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }

    private int line() {
        return Math.max(1, parser.currentTokenLocation().getLineNr());
    }

    private YamlNode node(int depth) {
        int line = line();
        refuseAnchorsAndTags(line);
        if (depth > DEEPEST) {
            throw InputProblem.in(name)
                    .row(line)
                    .expected("at most " + DEEPEST + " levels")
                    .found("more")
                    .problem();
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(line, depth);
        }
        if (token == JsonToken.START_ARRAY) {
            List<YamlNode> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(node(depth + 1));
            }
            return new YamlNode.Sequence(items, line);
        }
        String text = token == JsonToken.VALUE_NULL ? "" : parser.getString();
        return new YamlNode.Scalar(text == null ? "" : text.strip(), line);
    }

    private YamlNode.Mapping mapping(int line, int depth) {
        Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            int keyLine = line();
            String key = parser.currentName();
            parser.nextToken();
            YamlNode value = node(depth + 1);
            YamlNode.Entry earlier = entries.putIfAbsent(key, new YamlNode.Entry(value, keyLine));
            if (earlier != null) {
                throw InputProblem.in(name)
                        .row(keyLine)
                        .column(key)
                        .expected("each key once")
                        .found("it already in line " + earlier.keyLine())
                        .advice("Remove one of them.")
                        .problem();
            }
        }
        return new YamlNode.Mapping(entries, line);
    }

    private void refuseAnchorsAndTags(int line) {
        boolean alias = parser instanceof YAMLParser yaml && yaml.isCurrentAlias();
        if (alias || parser.getObjectId() != null || parser.getTypeId() != null) {
            throw InputProblem.in(name)
                    .row(line)
                    .expected("plain values")
                    .found(parser.getTypeId() != null ? "a tag (!...)" : "an anchor or alias (& or *)")
                    .advice("Write the values out.")
                    .problem();
        }
    }
}
