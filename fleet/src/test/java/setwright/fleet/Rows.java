package setwright.fleet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rows of Parquet files, read by an engine that has no part in writing the test's expectations: numbers as their 64 bits. */
public final class Rows {
    private Rows() {}

    /** Returns all files of a table, sorted. */
    public static List<Path> files(Path table) {
        try (Stream<Path> all = Files.walk(table)) {
            return all.filter(file -> file.toString().endsWith(".parquet"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the columns with their types. */
    public static List<String> columns(Path file) {
        return ask("DESCRIBE SELECT * FROM " + table(List.of(file))).stream()
                .map(row -> row.get(0) + " " + row.get(1))
                .toList();
    }

    /** Returns the rows of some files, in order. */
    public static List<List<Object>> of(List<Path> files, String where) {
        return ask("SELECT * FROM " + table(files) + where);
    }

    /** Returns rows without the first columns. */
    public static List<List<Object>> without(int first, List<List<Object>> rows) {
        return rows.stream().map(row -> row.subList(first, row.size())).toList();
    }

    private static String table(List<Path> files) {
        return files.stream()
                .map(file -> "'" + file.toString().replace("'", "''") + "'")
                .collect(Collectors.joining(", ", "read_parquet([", "], hive_partitioning = false) "));
    }

    /** Copies a table without one of its columns. */
    public static void copyWithout(String column, Path from, Path to) {
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute("COPY (SELECT * EXCLUDE (\"" + column + "\") FROM " + table(List.of(from)) + ") TO '" + to
                    + "' (FORMAT parquet)");
        } catch (SQLException e) {
            throw new IllegalStateException(column, e);
        }
    }

    public static List<List<Object>> ask(String question) {
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            statement.execute("SET threads = 1");
            try (ResultSet rows = statement.executeQuery(question)) {
                List<List<Object>> all = new ArrayList<>();
                while (rows.next()) {
                    List<Object> cells = new ArrayList<>();
                    for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                        Object cell = rows.getObject(i);
                        cells.add(
                                cell instanceof Double number
                                        ? Long.valueOf(Double.doubleToRawLongBits(number))
                                        : cell);
                    }
                    all.add(cells);
                }
                return all;
            }
        } catch (SQLException e) {
            throw new IllegalStateException(question, e);
        }
    }
}
