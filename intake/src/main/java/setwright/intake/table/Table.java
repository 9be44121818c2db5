package setwright.intake.table;

import java.util.List;
import java.util.Optional;

/**
 * A table of numbers as it stands in a file.
 *
 * @param file      name of the file, without folders
 * @param columns   in the file's order, all equally long
 * @param firstRow  line of the file that holds the first row of numbers, counted from 1; 1 where rows are records, not lines
 * @param remarks   what was left out of it and why, and what it was put together from, in sentences
 */
public record Table(String file, List<TableColumn> columns, long firstRow, List<String> remarks) {
    public Table {
        columns = List.copyOf(columns);
        remarks = List.copyOf(remarks);
    }

    /** Makes a table that nothing was left out of. */
    public Table(String file, List<TableColumn> columns, long firstRow) {
        this(file, columns, firstRow, List.of());
    }

    /** Returns the number of rows of numbers. */
    public int rowCount() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }

    /** Returns the rows {@code from} (inclusive) to {@code to} (exclusive) as a table of their own; its lines are still those of the file. */
    public Table part(int from, int to) {
        return new Table(
                file, columns.stream().map(column -> column.part(from, to)).toList(), firstRow + from, remarks);
    }

    /** Returns the column with exactly this header. */
    public Optional<TableColumn> column(String header) {
        return columns.stream().filter(column -> column.header().equals(header)).findFirst();
    }

    /** Returns the line of the file that row {@code index} (from 0) stands in; blank lines inside the table are not counted. */
    public long lineOf(int index) {
        return firstRow + index;
    }
}
