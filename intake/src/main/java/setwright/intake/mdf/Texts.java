package setwright.intake.mdf;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Names, units and words that blocks link to.
 *
 * <p><b>Source:</b> ASAM MDF 4, TXBLOCK (UTF-8, ended by a zero) and MDBLOCK (the same, but XML whose element TX holds the plain
 * text). The XML is not parsed: one element is cut out, so that nothing in it can reach outside of the file.
 */
final class Texts {
    /** Far above any name or unit; comments may be longer and are not needed. */
    private static final int MOST_BYTES = 1 << 16;

    private static final Pattern PLAIN = Pattern.compile("<TX(?:\\s[^>]*)?>([^<]*)</TX>");
    private static final Pattern ENTITY =
            Pattern.compile("&(?:(lt|gt|amp|quot|apos)|#(\\d{1,7})|#x([0-9a-fA-F]{1,6}));");

    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

    private final MdfFile file;
    private final Map<Long, String> known = new HashMap<>();

    Texts(MdfFile file) {
        this.file = file;
    }

    /** Returns the text behind a link; empty when there is none. */
    String at(long link) {
        if (link == Block.NIL) {
            return "";
        }
        String text = known.get(link);
        if (text == null) {
            text = read(link);
            known.put(link, text);
        }
        return text;
    }

    private String read(long link) {
        Block block = Block.at(file, link, "a text", "TX", "MD");
        int length = (int) Math.min(MOST_BYTES, block.dataLength());
        byte[] bytes = block.data(length).array();
        int end = 0;
        while (end < length && bytes[end] != 0) {
            end++;
        }
        String text = new String(bytes, 0, end, StandardCharsets.UTF_8);
        if (block.id().equals("MD")) {
            Matcher plain = PLAIN.matcher(text);
            text = plain.find() ? unescaped(plain.group(1)) : "";
        }
        return CONTROL.matcher(text).replaceAll(" ").strip();
    }

    private static String unescaped(String xml) {
        return ENTITY.matcher(xml)
                .replaceAll(match -> Matcher.quoteReplacement(
                        letter(match.group(1), match.group(2), match.group(3), match.group())));
    }

    private static String letter(
            @Nullable String name, @Nullable String decimal, @Nullable String hexadecimal, String whole) {
        if (name != null) {
            return switch (name) {
                case "lt" -> "<";
                case "gt" -> ">";
                case "amp" -> "&";
                case "quot" -> "\"";
                default -> "'";
            };
        }
        int point = decimal != null ? Integer.parseInt(decimal) : Integer.parseInt(String.valueOf(hexadecimal), 16);
        return Character.isValidCodePoint(point) ? Character.toString(point) : whole;
    }
}
