package setwright.app.manual;

import java.util.List;

/**
 * Writes lines that {@code man} sets, with the macros of man(7).
 *
 * <p>Text never becomes a macro: a backslash and a minus are spelt out, and a full stop or an apostrophe at the beginning of a
 * line is shielded.
 */
final class Roff {
    private final StringBuilder text = new StringBuilder();

    /** Begins the page. */
    Roff title(String name, String version) {
        return macro("TH " + quoted(name) + " \"1\" \"\" " + quoted(version) + " \"User Commands\"");
    }

    Roff section(String heading) {
        return macro("SH " + quoted(heading));
    }

    Roff paragraph() {
        return macro("PP");
    }

    /** A line that is indented below the tag that precedes it. */
    Roff tagged(String tag, List<String> body) {
        macro("TP").bold(tag);
        if (body.isEmpty()) {
            return macro("br");
        }
        for (int i = 0; i < body.size(); i++) {
            if (i > 0) {
                macro("IP");
            }
            line(body.get(i));
        }
        return this;
    }

    Roff bold(String words) {
        text.append("\\fB").append(escaped(words)).append("\\fR\n");
        return this;
    }

    Roff line(String words) {
        String escaped = escaped(words);
        text.append(escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" : "")
                .append(escaped)
                .append('\n');
        return this;
    }

    /** Lines that are set as they stand. */
    Roff asTheyStand(List<String> lines) {
        macro("RS 4").macro("nf");
        lines.forEach(this::line);
        return macro("fi").macro("RE");
    }

    private Roff macro(String words) {
        text.append('.').append(words).append('\n');
        return this;
    }

    private static String quoted(String words) {
        return '"' + escaped(words).replace("\"", "\\(dq") + '"';
    }

    private static String escaped(String words) {
        return words.replace("\\", "\\e").replace("-", "\\-");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
