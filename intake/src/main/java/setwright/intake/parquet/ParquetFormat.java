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
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;
import setwright.intake.table.TableFormat;

/** Apache Parquet, any compression that the SQL engine knows; one row for each sample. */
public final class ParquetFormat implements TableFormat {
    /** The format's first and last four bytes (Apache Parquet, "File format"). */
    private static final byte[] MAGIC = {'P', 'A', 'R', '1'};

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
            int count = count(name, statement, source, cells.size());
            return List.of(new Table(name, columns(statement, source, cells, count), 1));
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

    private static int count(String name, Statement statement, String source, int width) throws SQLException {
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
            long most = Math.min(Engine.mostRows(width), Integer.MAX_VALUE - 8);
            if (count > most) {
                throw InputProblem.in(name)
                        .expected("a recording that fits into memory")
                        .found(count + " rows of " + width + " columns")
                        .advice("Cut the file into shorter recordings, or give the program more memory (-Xmx).")
                        .problem();
            }
            return (int) count;
        }
    }

    private static List<TableColumn> columns(Statement statement, String source, List<Cells> cells, int count)
            throws SQLException {
        List<String> asked = new ArrayList<>();
        for (Cells cell : cells) {
            asked.add(cell.number());
            cell.word().ifPresent(asked::add);
        }
        List<Filling> fillings =
                cells.stream().map(cell -> new Filling(cell, count)).toList();
        try (ResultSet rows = statement.executeQuery("SELECT " + String.join(", ", asked) + source)) {
            int row = 0;
            while (rows.next() && row < count) {
                int place = 1;
                for (Filling filling : fillings) {
                    place = filling.take(rows, place, row);
                }
                row++;
            }
            if (row != count) {
                throw new SQLException(row + " rows instead of " + count);
            }
        }
        return fillings.stream().map(Filling::done).toList();
    }

    /** A column while it is being read. */
    private static final class Filling {
        private final Cells cells;
        private final double[] values;
        private Optional<TableColumn.BadCell> firstBad = Optional.empty();
        private long badCount;

        Filling(Cells cells, int count) {
            this.cells = cells;
            this.values = new double[count];
        }

        /** Takes its cell of a row from the given place on; returns the next column's place. */
        int take(ResultSet rows, int place, int row) throws SQLException {
            double value = rows.getDouble(place);
            boolean missing = rows.wasNull();
            values[row] = missing || Double.isInfinite(value) ? Double.NaN : value;
            if (cells.word().isEmpty()) {
                return place + 1;
            }
            String word = missing ? rows.getString(place + 1) : null;
            if (word != null) {
                badCount++;
                if (firstBad.isEmpty()) {
                    firstBad = Optional.of(new TableColumn.BadCell(row + 1L, word));
                }
            }
            return place + 2;
        }

        TableColumn done() {
            return new TableColumn(cells.header(), "", values, firstBad, badCount);
        }
    }
}
