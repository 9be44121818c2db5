package setwright.benchmarks.measure;

import java.io.PrintStream;
import java.util.List;

/** Prints a table as Markdown, a line at once as its figures are known. */
public final class MarkdownTable {
    private final PrintStream out;
    private final int width;

    /** Prints the head. */
    public MarkdownTable(PrintStream out, String... heads) {
        this.out = out;
        this.width = heads.length;
        out.println();
        line(List.of(heads));
        out.println("|---".repeat(width) + "|");
    }

    /** Prints a row. */
    public void row(String... cells) {
        if (cells.length != width) {
            throw new IllegalArgumentException("a row of this table has " + width + " cells, got " + cells.length);
        }
        line(List.of(cells));
    }

    private void line(List<String> cells) {
        StringBuilder text = new StringBuilder("|");
        for (String cell : cells) {
            text.append(' ').append(cell.replace("|", "\\|")).append(cell.isEmpty() ? "|" : " |");
        }
        out.println(text);
        out.flush();
    }
}
