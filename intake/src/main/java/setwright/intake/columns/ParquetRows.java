package setwright.intake.columns;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import setwright.intake.engine.Engine;

/** Reads rows of tables that {@link ParquetTable} wrote, and copies such tables without some of their rows. */
public final class ParquetRows {
    /** A statement names so many files at once. */
    private static final int AT_ONCE = 500;
    /** What the engine calls the column of the file that a row is from. */
    private static final String FILE = "a file of the list";

    private ParquetRows() {}

    /**
     * Hands over chosen columns of every row, files and rows in order. A column that some files lack is empty there.
     *
     * @param files    of one table
     * @param headers  of the columns
     * @param row      takes the number of the file in the list, and the cells as texts; an empty cell is an empty text
     * @throws IOException when a file cannot be read, or all lack a column
     */
    public static void read(List<Path> files, List<String> headers, BiConsumer<Integer, List<String>> row)
            throws IOException {
        String columns = headers.stream()
                .map(header -> "CAST(" + Engine.name(header) + " AS VARCHAR)")
                .collect(Collectors.joining(", "));
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement()) {
            for (int from = 0; from < files.size(); from += AT_ONCE) {
                List<Path> some = files.subList(from, Math.min(from + AT_ONCE, files.size()));
                Map<Path, Integer> numbers = new HashMap<>();
                for (Path file : some) {
                    numbers.put(file.toAbsolutePath(), from + numbers.size());
                }
                try (ResultSet rows = statement.executeQuery("SELECT " + columns + ", " + Engine.name(FILE) + " FROM "
                        + table(some, ", union_by_name = true, filename = " + Engine.text(FILE)))) {
                    while (rows.next()) {
                        List<String> cells = new ArrayList<>();
                        for (int i = 1; i <= headers.size(); i++) {
                            cells.add(Objects.requireNonNullElse(rows.getString(i), ""));
                        }
                        Path file = Path.of(rows.getString(headers.size() + 1));
                        row.accept(numbers.getOrDefault(file, from), cells);
                    }
                }
            }
        } catch (SQLException e) {
            throw new IOException(
                    "a table that was kept cannot be read, perhaps because another version of the program wrote it: "
                            + Engine.firstLine(e),
                    e);
        }
    }

    /**
     * Copies a table without the rows that hold certain texts; all others stay as they are, to the bit and in order.
     *
     * @param column  header of the column that holds the texts
     * @param texts   of the rows that are left out
     * @throws IOException when it cannot be read or written
     */
    public static void copyWithout(Path from, Path to, String column, Collection<String> texts) throws IOException {
        String left = texts.stream().map(Engine::text).collect(Collectors.joining(", "));
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement()) {
            statement.execute(
                    "COPY (SELECT * FROM " + table(List.of(from), "") + " WHERE " + Engine.name(column) + " NOT IN ("
                            + left + ")) TO " + Engine.text(to.toString()) + " (FORMAT parquet, COMPRESSION zstd)");
        } catch (SQLException e) {
            throw new IOException("a table that was kept cannot be copied: " + Engine.firstLine(e), e);
        }
    }

    /** Without columns made from names of folders, which are no part of the table. */
    private static String table(List<Path> files, String more) {
        return "read_parquet(" + files.stream().map(Engine::file).collect(Collectors.joining(", ", "[", "]"))
                + ", hive_partitioning = false" + more + ")";
    }
}
