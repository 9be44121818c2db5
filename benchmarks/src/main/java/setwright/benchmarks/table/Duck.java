package setwright.benchmarks.table;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.intake.engine.Engine;

/** What DuckDB does by itself, with all that it finds out on its own; as a process of its own too. */
public final class Duck implements AutoCloseable {
    private final Connection connection;
    private final Statement statement;

    /** Opens it in memory with so many threads. */
    Duck(int threads) throws SQLException {
        connection = DriverManager.getConnection("jdbc:duckdb:");
        statement = connection.createStatement();
        statement.execute("SET threads = " + threads);
    }

    /** {@code copy FILE TO THREADS} or {@code read FILE THREADS}. */
    public static void main(String[] arguments) throws SQLException {
        try (Duck duck = new Duck(Integer.parseInt(arguments[arguments.length - 1]))) {
            Path file = Path.of(arguments[1]);
            switch (arguments[0]) {
                case "copy" -> duck.copy(file, Path.of(arguments[2]));
                case "read" -> duck.read(file);
                default -> throw new IllegalArgumentException("copy or read, not " + arguments[0]);
            }
        }
    }

    /** Copies a CSV file to a Parquet file, packed as ours are. */
    void copy(Path file, Path to) throws SQLException {
        statement.execute("COPY (SELECT * FROM read_csv(" + Engine.file(file) + ")) TO "
                + Engine.text(to.toAbsolutePath().toString()) + " (FORMAT parquet, COMPRESSION zstd)");
    }

    /** Reads a CSV file into columns in memory. */
    void read(Path file) throws SQLException {
        statement.execute("CREATE OR REPLACE TABLE cells AS SELECT * FROM read_csv(" + Engine.file(file) + ")");
    }

    /** Adds up every column of a Parquet file: the least that needs all of its numbers. */
    double scan(Path parquet) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (ResultSet found =
                statement.executeQuery("DESCRIBE SELECT * FROM read_parquet(" + Engine.file(parquet) + ")")) {
            while (found.next()) {
                columns.add(found.getString(1));
            }
        }
        String sums = columns.stream()
                .map(column -> "sum(" + Engine.name(column) + ")")
                .collect(Collectors.joining(", "));
        double total = 0.0;
        try (ResultSet found =
                statement.executeQuery("SELECT " + sums + " FROM read_parquet(" + Engine.file(parquet) + ")")) {
            found.next();
            for (int i = 1; i <= columns.size(); i++) {
                total += found.getDouble(i);
            }
        }
        return total;
    }

    @Override
    public void close() throws SQLException {
        statement.close();
        connection.close();
    }
}
