package setwright.intake.parquet;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duckdb.DuckDBDataChunkReader;
import org.duckdb.DuckDBReadableVector;
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.spill.Columns;
import setwright.intake.table.Numbers;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;
import setwright.intake.table.TableFormat;

/** Apache Parquet, any compression that the SQL engine knows; one row for each sample. */
public final class ParquetFormat implements TableFormat {
    /** The format's first and last four bytes (Apache Parquet, "File format"). */
    private static final byte[] MAGIC = {'P', 'A', 'R', '1'};

    /** A column must fit into one array. */
    private static final int MOST_ROWS = Integer.MAX_VALUE - 8;

    @Override
    public String words() {
        return "a Parquet file";
    }

    @Override
    public boolean recognises(byte[] head) {
        return head.length >= MAGIC.length && Arrays.equals(head, 0, MAGIC.length, MAGIC, 0, MAGIC.length);
    }

    @Override
    public List<Table> read(Path file) {
        String name = String.valueOf(file.getFileName());
        String source = " FROM read_parquet(" + Engine.file(file) + ", hive_partitioning = false)";
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement()) {
            List<Cells> cells = cells(statement, source);
            int count = count(name, statement, source);
            return List.of(new Table(name, columns(connection, source, cells, count), 1));
        } catch (SQLException e) {
            throw InputProblem.in(name)
                    .expected("a whole Parquet file")
                    .found("a damaged one (" + Engine.firstLine(e) + ")")
                    .advice("Copy or export it again.")
                    .causedBy(e);
        }
    }

    /**
     * How a column is read.
     *
     * @param header  as written
     * @param number  what gives its numbers
     * @param word    what gives its cells where they may be no numbers; empty where they always are
     */
    private record Cells(String header, String number, Optional<String> word) {
        static Cells of(String header, String type) {
            String column = Engine.name(header);
            if (type.startsWith("TIMESTAMP") || type.startsWith("TIME") || type.equals("DATE")) {
                return new Cells(header, "epoch(" + column + ")", Optional.empty());
            }
            boolean nested = type.endsWith("]") || type.startsWith("STRUCT") || type.startsWith("MAP");
            if (nested || type.equals("BLOB") || type.equals("UUID") || type.equals("INTERVAL")) {
                return new Cells(header, "NULL::DOUBLE", Optional.of("'" + type.replaceAll("\\W.*", "") + "'"));
            }
            if (type.equals("VARCHAR") || type.startsWith("ENUM")) {
                return new Cells(
                        header,
                        "try_cast(trim(" + column + "::VARCHAR) AS DOUBLE)",
                        Optional.of("nullif(trim(" + column + "::VARCHAR), '')"));
            }
            return new Cells(header, column + "::DOUBLE", Optional.empty());
        }
    }

    private static List<Cells> cells(Statement statement, String source) throws SQLException {
        List<Cells> cells = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery("SELECT *" + source + " LIMIT 0")) {
            ResultSetMetaData found = rows.getMetaData();
            for (int i = 1; i <= found.getColumnCount(); i++) {
                cells.add(Cells.of(found.getColumnName(i), found.getColumnTypeName(i)));
            }
        }
        return cells;
    }

    private static int count(String name, Statement statement, String source) throws SQLException {
        try (ResultSet rows = statement.executeQuery("SELECT count(*)" + source)) {
            rows.next();
            long count = rows.getLong(1);
            if (count < 2) {
                throw InputProblem.in(name)
                        .expected("many rows of numbers, one per sample")
                        .found(count == 0 ? "none" : "one row")
                        .advice("Export the whole recording.")
                        .problem();
            }
            if (count > MOST_ROWS) {
                throw InputProblem.in(name)
                        .expected("a recording of fewer rows")
                        .found(count + " rows")
                        .advice("Cut the file into shorter recordings.")
                        .problem();
            }
            return (int) count;
        }
    }

    private static List<TableColumn> columns(Connection connection, String source, List<Cells> cells, int count)
            throws SQLException {
        List<String> asked = new ArrayList<>();
        for (Cells cell : cells) {
            asked.add(cell.number());
            cell.word().ifPresent(asked::add);
        }
        Columns numbers = new Columns(cells.size(), Columns.USUAL_CELLS);
        List<BadCells> bad = cells.stream().map(cell -> new BadCells()).toList();
        Engine.ask(
                connection,
                "SELECT " + String.join(", ", asked) + source,
                chunk -> numbers.add(block(chunk, cells, bad, numbers.rows())));
        if (numbers.rows() != count) {
            throw new SQLException(numbers.rows() + " rows instead of " + count);
        }
        List<Numbers> done = numbers.done();
        List<TableColumn> columns = new ArrayList<>();
        for (int c = 0; c < done.size(); c++) {
            columns.add(new TableColumn(cells.get(c).header(), "", done.get(c), bad.get(c).first, bad.get(c).count));
        }
        return columns;
    }

    private static double[][] block(DuckDBDataChunkReader chunk, List<Cells> cells, List<BadCells> bad, long before) {
        int count = (int) chunk.rowCount();
        double[][] block = new double[cells.size()][count];
        int place = 0;
        for (int c = 0; c < block.length; c++) {
            DuckDBReadableVector numbers = chunk.vector(place++);
            for (int i = 0; i < count; i++) {
                double value = numbers.getDouble(i, Double.NaN);
                block[c][i] = Double.isInfinite(value) ? Double.NaN : value;
            }
            if (cells.get(c).word().isPresent()) {
                DuckDBReadableVector words = chunk.vector(place++);
                for (int i = 0; i < count; i++) {
                    if (numbers.isNull(i) && !words.isNull(i)) {
                        bad.get(c).add(before + i + 1L, words.getString(i));
                    }
                }
            }
        }
        return block;
    }

    /** Cells of a column that are no numbers. Mutable. */
    private static final class BadCells {
        private Optional<TableColumn.BadCell> first = Optional.empty();
        private long count;

        void add(long row, String text) {
            count++;
            if (first.isEmpty()) {
                first = Optional.of(new TableColumn.BadCell(row, text));
            }
        }
    }
}
