package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import setwright.app.units.Figures;

/** Lines of text with names in a margin, wrapped to a terminal's width. */
final class TextLines {
    private static final int MARGIN = 9;

    private final Terminal terminal;
    private final List<String> lines = new ArrayList<>();

    TextLines(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Returns all lines, ending with a line break. */
    String text() {
        return String.join("\n", lines).replace(Figures.KEPT_TOGETHER, ' ') + "\n";
    }

    /** Adds an empty line. */
    void gap() {
        lines.add("");
    }

    /** Adds a line as it is. */
    void plain(String line) {
        lines.add(line);
    }

    /** Adds text over the whole width. */
    void wide(String text) {
        Wrap.lines(text, terminal.width())
                .forEach(line -> lines.add(terminal.paint().bold(line)));
    }

    /** Adds text over the whole width that matters less. */
    void faint(String text) {
        Wrap.lines(text, terminal.width())
                .forEach(line -> lines.add(terminal.paint().faint(line)));
    }

    /** Adds text beside its name. */
    void paragraph(String name, String text) {
        paragraph(name, text, false);
    }

    /** Adds text below a table that says how to read it. */
    void note(String text) {
        paragraph("", text, true);
    }

    /** Adds paragraphs, the first beside their name. */
    void paragraphs(String name, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            paragraph(i == 0 ? name : "", texts.get(i));
        }
    }

    /** Adds paragraphs with their numbers, the first beside their name. */
    void numbered(String name, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            paragraph(i == 0 ? name : "", (i + 1) + ". " + texts.get(i));
        }
    }

    /** Adds a table inside the margin. */
    void table(TextTable table) {
        table.lines(terminal.width() - MARGIN, terminal.paint())
                .forEach(line -> lines.add((" ".repeat(MARGIN) + line).stripTrailing()));
    }

    /** Adds a table over the whole width. */
    void wide(TextTable table) {
        lines.addAll(table.lines(terminal.width(), terminal.paint()));
    }

    private void paragraph(String name, String text, boolean faint) {
        List<String> wrapped = Wrap.lines(text, terminal.width() - MARGIN);
        for (int i = 0; i < wrapped.size(); i++) {
            String label = i == 0 ? name : "";
            String line = faint ? terminal.paint().faint(wrapped.get(i)) : wrapped.get(i);
            lines.add(
                    (label.isEmpty() ? "" : terminal.paint().bold(label)) + " ".repeat(MARGIN - label.length()) + line);
        }
    }
}
