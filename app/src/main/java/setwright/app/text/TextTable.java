package setwright.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table in plain characters that leaves out its least important columns where the line is too short.
 *
 * @param columns  left to right
 * @param rows     as many cells as columns each
 */
public record TextTable(List<Column> columns, List<List<Cell>> rows) {
    private static final String GAP = "  ";

    public TextTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row has " + row.size() + " cells where the table has " + columns.size() + " columns");
            }
        }
    }

    /**
     * A column.
     *
     * @param heading  with its unit
     * @param right    whether figures stand flush right
     * @param weight   the smaller, the sooner it is left out
     */
    public record Column(String heading, boolean right, int weight) {}

    /**
     * A cell.
     *
     * @param text   as shown
     * @param style  how it is painted
     */
    public record Cell(String text, Style style) {
        public Cell {
            text = Wrap.clean(text);
        }

        /** A cell without paint. */
        public static Cell of(String text) {
            return new Cell(text, Style.PLAIN);
        }
    }

    /** How a cell is painted. */
    public enum Style {
        PLAIN,
        FAINT,
        PUSH,
        SLIDE
    }

    /** Returns the lines of the table, none longer than the width if leaving columns out can do it. */
    public List<String> lines(int width, Paint paint) {
        List<Integer> shown =
                new ArrayList<>(IntStream.range(0, columns.size()).boxed().toList());
        while (shown.size() > 1 && total(shown) > width) {
            shown.remove(shown.stream()
                    .min(java.util.Comparator.comparingInt(
                                    (Integer c) -> columns.get(c).weight())
                            .thenComparing(java.util.Comparator.reverseOrder()))
                    .orElseThrow());
        }
        List<String> lines = new ArrayList<>();
        lines.add(line(
                shown,
                columns.stream().map(c -> new Cell(c.heading(), Style.FAINT)).toList(),
                paint));
        rows.forEach(row -> lines.add(line(shown, row, paint)));
        return lines;
    }

    private int total(List<Integer> shown) {
        return shown.stream().mapToInt(this::width).sum() + GAP.length() * (shown.size() - 1);
    }

    private int width(int column) {
        return Math.max(
                columns.get(column).heading().length(),
                rows.stream()
                        .mapToInt(row -> row.get(column).text().length())
                        .max()
                        .orElse(0));
    }

    private String line(List<Integer> shown, List<Cell> cells, Paint paint) {
        StringBuilder line = new StringBuilder();
        for (int column : shown) {
            Cell cell = cells.get(column);
            String room = " ".repeat(width(column) - cell.text().length());
            String painted = paint(cell, paint);
            line.append(line.length() > 0 ? GAP : "")
                    .append(columns.get(column).right() ? room + painted : painted + room);
        }
        return line.toString().stripTrailing();
    }

    private static String paint(Cell cell, Paint paint) {
        return switch (cell.style()) {
            case PLAIN -> cell.text();
            case FAINT -> paint.faint(cell.text());
            case PUSH -> paint.push(cell.text());
            case SLIDE -> paint.slide(cell.text());
        };
    }
}
