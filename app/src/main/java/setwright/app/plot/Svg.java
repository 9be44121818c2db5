package setwright.app.plot;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/** Writes SVG elements one after the other, escaping every attribute and text. */
public final class Svg {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are given as name, value, name, value. */
    public Svg open(String element, String... attributes) {
        tag(element, attributes).append('>');
        open.push(element);
        return this;
    }

    /** Closes the element opened last. */
    public Svg close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Adds an element without content. */
    public Svg add(String element, String... attributes) {
        tag(element, attributes).append("/>");
        return this;
    }

    /** Adds an element that holds text. */
    public Svg text(String element, String content, String... attributes) {
        tag(element, attributes)
                .append('>')
                .append(escape(content))
                .append("</")
                .append(element)
                .append('>');
        return this;
    }

    /** Adds a drawing as it is. */
    public Svg put(Markup drawing) {
        out.append(drawing.text());
        return this;
    }

    /** Returns the drawing; every element must have been closed. */
    public Markup markup() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("element " + open.peek() + " is not closed");
        }
        return new Markup(out.toString());
    }

    private StringBuilder tag(String element, String... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("an attribute of " + element + " has no value");
        }
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escape(attributes[i + 1]))
                    .append('"');
        }
        return out;
    }

    /** Returns a coordinate with one decimal, without a needless one. */
    public static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        String bare = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
        return bare.equals("-0") ? "0" : bare;
    }

    /** Returns a share 0..1 as a percentage for a coordinate. */
    public static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f%%", 100.0 * share);
    }

    private static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.chars().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> {
                    // Control characters are not allowed in XML 1.0, not even escaped.
                    if (c >= 0x20 || c == '\t' || c == '\n') {
                        escaped.append((char) c);
                    }
                }
            }
        });
        return escaped.toString();
    }
}
