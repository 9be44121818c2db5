package setwright.intake.columns;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Collectors;
import org.duckdb.DuckDBAppender;
import org.duckdb.DuckDBConnection;
import setwright.intake.engine.Engine;

/** Writes any table to a Parquet file. */
public final class ParquetTable {
    private ParquetTable() {}

    /** What a column holds; a cell of any may be empty. */
    public enum Kind {
        TEXT("VARCHAR"),
        WHOLE("BIGINT"),
        NUMBER("DOUBLE"),
        TRUTH("BOOLEAN");

        private final String engineType;

        Kind(String engineType) {
            this.engineType = engineType;
        }
    }

    /**
     * A column.
     *
     * @param header  unique within its table, in any letter case
     * @param kind    of every cell
     */
    public record Head(String header, Kind kind) {}

    /** Fills a table. */
    @FunctionalInterface
    public interface Filling {
        /** Gives all cells. */
        void fill(TableCells cells) throws IOException;
    }

    /**
     * Writes a table; whoever needs it whole or not at all writes aside and renames.
     *
     * @param file  is replaced
     * @throws IOException when it cannot be written
     */
    public static void write(Path file, List<Head> heads, Filling filling) throws IOException {
        try (Growing table = open(heads)) {
            filling.fill(table.cells());
            table.finish(file);
        }
    }

    /**
     * Begins a table whose rows come little by little; whoever asks for it closes it.
     *
     * @throws IOException when the engine cannot be used
     */
    public static Growing open(List<Head> heads) throws IOException {
        try {
            return new Growing(heads);
        } catch (SQLException e) {
            throw new IOException("a table cannot be written: " + Engine.firstLine(e), e);
        }
    }

    /** A table that grows, held by an engine of its own until it is written. */
    public static final class Growing implements AutoCloseable {
        private final Connection connection;
        private final DuckDBAppender rows;
        private final Appending cells;

        private Growing(List<Head> heads) throws SQLException {
            connection = Engine.open();
            try (Statement statement = connection.createStatement()) {
                statement.execute(heads.stream()
                        .map(head -> Engine.name(head.header()) + " " + head.kind().engineType)
                        .collect(Collectors.joining(", ", "CREATE TABLE kept (", ")")));
                rows = connection
                        .unwrap(DuckDBConnection.class)
                        .createAppender(DuckDBConnection.DEFAULT_SCHEMA, "kept");
            } catch (SQLException e) {
                connection.close();
                throw e;
            }
            cells = new Appending(rows);
        }

        /** Returns what takes the cells. */
        public TableCells cells() {
            return cells;
        }

        /**
         * Writes all rows; none can be added afterwards.
         *
         * @param file  is replaced
         * @throws IOException when it cannot be written
         */
        public void finish(Path file) throws IOException {
            cells.end();
            try (Statement statement = connection.createStatement()) {
                rows.close();
                statement.execute(
                        "COPY kept TO " + Engine.text(file.toString()) + " (FORMAT parquet, COMPRESSION zstd)");
            } catch (SQLException e) {
                throw new IOException("cannot write " + file + ": " + Engine.firstLine(e), e);
            }
        }

        @Override
        public void close() throws IOException {
            try (connection) {
                rows.close();
            } catch (SQLException e) {
                throw new IOException("a table cannot be closed: " + Engine.firstLine(e), e);
            }
        }
    }

    /** Hands cells to the engine. */
    private static final class Appending implements TableCells {
        private final DuckDBAppender rows;
        private boolean within;

        Appending(DuckDBAppender rows) {
            this.rows = rows;
        }

        @Override
        public void row() throws IOException {
            end();
            call(rows::beginRow);
            within = true;
        }

        void end() throws IOException {
            if (within) {
                call(rows::endRow);
                within = false;
            }
        }

        @Override
        public void text(String text) throws IOException {
            call(() -> rows.append(text));
        }

        @Override
        public void whole(long number) throws IOException {
            call(() -> rows.append(number));
        }

        @Override
        public void number(double number) throws IOException {
            call(() -> rows.append(number));
        }

        @Override
        public void truth(boolean truth) throws IOException {
            call(() -> rows.append(truth));
        }

        @Override
        public void empty() throws IOException {
            call(rows::appendNull);
        }

        private static void call(Step step) throws IOException {
            try {
                step.run();
            } catch (SQLException e) {
                throw new IOException("a table cannot be written: " + Engine.firstLine(e), e);
            }
        }

        private interface Step {
            Object run() throws SQLException;
        }
    }
}
