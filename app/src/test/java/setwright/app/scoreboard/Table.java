package setwright.app.scoreboard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rows of text under headers.
 *
 * @param headers  of the columns
 * @param rows     as many cells as headers
 */
public record Table(List<String> headers, List<List<String>> rows) {

    /** Returns the table in columns of equal width, for a terminal. */
    public String text() {
        List<Integer> widths = new ArrayList<>();
        for (int column = 0; column < headers.size(); column++) {
            int width = headers.get(column).length();
            for (List<String> row : rows) {
                width = Math.max(width, row.get(column).length());
            }
            widths.add(width);
        }
        StringBuilder text = new StringBuilder(line(headers, widths));
        rows.forEach(row -> text.append(line(row, widths)));
        return text.toString();
    }

    private static String line(List<String> cells, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < cells.size(); column++) {
            String cell = cells.get(column);
            line.append(cell).append(" ".repeat(widths.get(column) - cell.length() + 2));
        }
        return line.toString().stripTrailing() + "\n";
    }

    /** Returns the table in Markdown. */
    public String markdown() {
        String rule = headers.stream().map(header -> "---").collect(Collectors.joining(" | ", "| ", " |\n"));
        return markdown(headers) + rule + rows.stream().map(Table::markdown).collect(Collectors.joining());
    }

    private static String markdown(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.strip().replace("|", "\\|"))
                .collect(Collectors.joining(" | ", "| ", " |\n"));
    }
}
