package setwright.app.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks sentences into lines. */
final class Wrap {
    private Wrap() {}

    /** Returns lines of at most {@code width} characters; a longer word stands alone. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : clean(text).strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Leaves out what would steer the terminal: names in files may hold anything. */
    static String clean(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
