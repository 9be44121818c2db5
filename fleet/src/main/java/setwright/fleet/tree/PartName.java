package setwright.fleet.tree;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of folders that hold a key and a value, {@code circuit=hill}: how tables cut into parts are commonly laid out. Letters that have no
 * place in a name stand as {@code %} with their hexadecimal code.
 */
public final class PartName {
    /** What the convention writes for no value. */
    public static final String NO_VALUE = "__HIVE_DEFAULT_PARTITION__";

    private static final Pattern CODE = Pattern.compile("%([0-9A-Fa-f]{2})");
    private static final String FORBIDDEN = "\"#%'*/:=?\\{}[]^|<>&+;";

    private PartName() {}

    /**
     * A key with its value.
     *
     * @param key    as the folder has it
     * @param value  empty for none
     */
    public record Part(String key, String value) {}

    /** Returns what a folder's name says; empty when it is no such name. */
    public static Optional<Part> read(String folder) {
        int at = folder.indexOf('=');
        if (at < 1) {
            return Optional.empty();
        }
        String value = decoded(folder.substring(at + 1));
        return Optional.of(new Part(decoded(folder.substring(0, at)), value.equals(NO_VALUE) ? "" : value));
    }

    /** Returns the folder's name for a key and its value. */
    public static String write(String key, String value) {
        return key + "=" + (value.isEmpty() ? NO_VALUE : encoded(value));
    }

    /** Returns a text as a name of a file or folder, from which it can be read back. */
    public static String encoded(String text) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            // A dot in front would hide the folder from programs that look for tables.
            if (letter < ' ' || letter == 127 || FORBIDDEN.indexOf(letter) >= 0 || (i == 0 && letter == '.')) {
                name.append(String.format("%%%02X", (int) letter));
            } else {
                name.append(letter);
            }
        }
        return name.toString();
    }

    /** A code is an octet of UTF-8, as most programs write them. */
    private static String decoded(String name) {
        ByteArrayOutputStream octets = new ByteArrayOutputStream();
        for (int i = 0; i < name.length(); ) {
            Matcher code = CODE.matcher(name).region(i, name.length());
            if (code.lookingAt()) {
                octets.write(Integer.parseInt(code.group(1), 16));
                i += 3;
            } else {
                int letter = name.codePointAt(i);
                octets.writeBytes(Character.toString(letter).getBytes(StandardCharsets.UTF_8));
                i += Character.charCount(letter);
            }
        }
        return octets.toString(StandardCharsets.UTF_8);
    }
}
