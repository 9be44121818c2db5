package setwright.intake.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Array;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.intake.engine.Engine;
import setwright.intake.problem.InputProblem;
import setwright.intake.spill.Columns;
import setwright.intake.table.Numbers;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/**
 * Reads a text table of any dialect into memory.
 *
 * <p>The first megabyte is judged here, on bounded memory; what looks like a table is parsed here when it is plain
 * ({@link PlainRows}), else by the SQL engine, which cuts the rows and turns cells into numbers. Cells that are no numbers come
 * back with their line.
 */
public final class CsvReader {
    private static final int ROWS_BEFORE_JUDGING = 1000;
    /** A column must fit into one array. */
    private static final int MOST_ROWS = Integer.MAX_VALUE - 8;

    private static final int BLOCK_ROWS = 4096;

    private CsvReader() {}

    /**
     * Reads a file.
     *
     * @throws InputProblem when it is missing, unreadable, or no table of numbers with a header
     */
    public static Table read(Path file) {
        String name = String.valueOf(file.getFileName());
        Sample sample = Sample.of(file);
        Dialect dialect = Sniffer.sniff(name, sample);
        int width = dialect.headers().size();
        Optional<List<Numbers>> plain = PlainRows.read(name, file, dialect, rows -> {
            if (rows >= MOST_ROWS) {
                throw tooLong(name, rows, width);
            }
        });
        if (plain.isPresent()) {
            return finish(name, dialect, plain.get(), noneBad(width), new long[width]);
        }
        return engine(name, file, dialect);
    }

    /** Reads by the SQL engine, which takes any table. */
    static Table engine(String name, Path file, Dialect dialect) {
        if (dialect.gzip()) {
            refuseBomb(name, file);
        }
        if (dialect.charset().equals(StandardCharsets.UTF_8)) {
            return query(name, file, dialect, dialect.gzip());
        }
        return readRecoded(name, file, dialect);
    }

    /** The engine unpacks by itself and does not mind how much comes out. */
    private static void refuseBomb(String name, Path file) {
        try (InputStream in = Sample.open(file, true)) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException e) {
            throw Sample.damaged(name, e);
        }
    }

    /** Other encodings are turned into UTF-8 in a temporary file, which is gone afterwards. */
    private static Table readRecoded(String name, Path file, Dialect dialect) {
        Path copy = null;
        try {
            copy = Files.createTempFile("setwright", ".csv");
            try (InputStream in = Sample.open(file, dialect.gzip());
                    Reader reader = new InputStreamReader(in, dialect.charset());
                    Writer writer = Files.newBufferedWriter(copy, StandardCharsets.UTF_8)) {
                reader.transferTo(writer);
            }
            return query(name, copy, dialect, false);
        } catch (IOException e) {
            throw InputProblem.in(name)
                    .expected("a readable file and some free disk space")
                    .found(e.getClass().getSimpleName())
                    .advice("Check the disk.")
                    .causedBy(e);
        } finally {
            if (copy != null) {
                copy.toFile().delete();
            }
        }
    }

    private static Table query(String name, Path file, Dialect dialect, boolean gzip) {
        try (Connection connection = Engine.open();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql(file, dialect, gzip))) {
            return collect(name, dialect, rows);
        } catch (SQLException e) {
            if (gzip && Engine.firstLine(e).toLowerCase(Locale.ROOT).contains("gzip")) {
                throw Sample.damaged(name, e);
            }
            throw InputProblem.in(name)
                    .expected("a table with " + dialect.headers().size() + " columns throughout")
                    .found("rows that cannot be cut into cells (" + Engine.firstLine(e) + ")")
                    .advice("Export the recording again.")
                    .causedBy(e);
        }
    }

    /** One column of numbers per column of the file, then the raw cells of those rows that hold something else. */
    private static String sql(Path file, Dialect dialect, boolean gzip) {
        int width = dialect.headers().size();
        List<String> numbers = new ArrayList<>();
        List<String> bad = new ArrayList<>();
        List<String> raw = new ArrayList<>();
        String missing = Cells.MISSING.stream().sorted().map(Engine::text).collect(Collectors.joining(", ", "(", ")"));
        for (int i = 0; i < width; i++) {
            String cell = "trim(c" + i + ")";
            String text = dialect.decimalComma() ? "replace(" + cell + ", ',', '.')" : cell;
            if (dialect.textColumn().get(i)) {
                numbers.add("NULL::DOUBLE");
                raw.add("NULL::VARCHAR");
                continue;
            }
            String number = "try_cast(" + text + " AS DOUBLE)";
            numbers.add(number);
            bad.add("(" + number + " IS NULL AND c" + i + " IS NOT NULL AND lower(" + cell + ") NOT IN " + missing
                    + ")");
            raw.add("c" + i);
        }
        String anyBad = bad.isEmpty() ? "false" : String.join(" OR ", bad);
        StringBuilder names = new StringBuilder();
        for (int i = 0; i < width; i++) {
            names.append(i == 0 ? "" : ", ").append("'c").append(i).append("': 'VARCHAR'");
        }
        return "SELECT " + String.join(", ", numbers) + ", CASE WHEN " + anyBad + " THEN [" + String.join(", ", raw)
                + "] END FROM read_csv(" + Engine.file(file)
                + ", auto_detect = false, hive_partitioning = false, delim = "
                + Engine.text(String.valueOf(dialect.delimiter()))
                + ", quote = '\"', escape = '\"', header = false, skip = "
                + (dialect.firstDataLine() - 1) + ", columns = {" + names + "}, compression = "
                + (gzip ? "'gzip'" : "'none'") + ", null_padding = true, strict_mode = false, ignore_errors = false"
                + ", max_line_size = 1000000, parallel = false)";
    }

    private static Table collect(String name, Dialect dialect, ResultSet rows) throws SQLException {
        int width = dialect.headers().size();
        Columns columns = new Columns(width, Columns.USUAL_CELLS);
        double[][] values = new double[width][BLOCK_ROWS];
        long[] badCount = new long[width];
        List<Optional<TableColumn.BadCell>> firstBad = noneBad(width);
        int held = 0;
        int count = 0;
        long badRows = 0;
        while (rows.next()) {
            if (count >= MOST_ROWS) {
                throw tooLong(name, count, width);
            }
            if (held == BLOCK_ROWS) {
                columns.add(values);
                values = new double[width][BLOCK_ROWS];
                held = 0;
            }
            for (int i = 0; i < width; i++) {
                double value = rows.getDouble(i + 1);
                values[i][held] = rows.wasNull() || Double.isInfinite(value) ? Double.NaN : value;
            }
            Array raw = rows.getArray(width + 1);
            if (raw != null) {
                badRows++;
                boolean[] missing = new boolean[width];
                for (int i = 0; i < width; i++) {
                    missing[i] = Double.isNaN(values[i][held]);
                }
                noteBad(dialect, (Object[]) raw.getArray(), missing, count, badCount, firstBad);
                if (badRows > ROWS_BEFORE_JUDGING && 2 * badRows > count) {
                    throw mostlyWords(name, dialect, count, firstBad);
                }
            }
            held++;
            count++;
        }
        for (int i = 0; i < width; i++) {
            values[i] = Arrays.copyOf(values[i], held);
        }
        columns.add(values);
        return finish(name, dialect, columns.done(), firstBad, badCount);
    }

    private static List<Optional<TableColumn.BadCell>> noneBad(int width) {
        return new ArrayList<>(Collections.nCopies(width, Optional.empty()));
    }

    private static void noteBad(
            Dialect dialect,
            Object[] cells,
            boolean[] missing,
            int row,
            long[] badCount,
            List<Optional<TableColumn.BadCell>> firstBad) {
        for (int i = 0; i < cells.length; i++) {
            Object cell = cells[i];
            if (cell != null && missing[i] && !Cells.isMissing(cell.toString())) {
                badCount[i]++;
                if (firstBad.get(i).isEmpty()) {
                    long line = dialect.firstDataLine() + (long) row;
                    firstBad.set(i, Optional.of(new TableColumn.BadCell(line, cell.toString())));
                }
            }
        }
    }

    private static InputProblem tooLong(String name, int count, int width) {
        return InputProblem.in(name)
                .expected("a recording of fewer rows")
                .found("more than " + count + " rows of " + width + " columns")
                .advice("Cut the file into shorter recordings.")
                .problem();
    }

    private static InputProblem mostlyWords(
            String name, Dialect dialect, int count, List<Optional<TableColumn.BadCell>> firstBad) {
        for (int i = 0; i < firstBad.size(); i++) {
            if (firstBad.get(i).isPresent()) {
                TableColumn.BadCell cell = firstBad.get(i).get();
                return InputProblem.in(name)
                        .row(cell.row())
                        .column(dialect.headers().get(i))
                        .value(cell.text())
                        .expected("a number; most of the first " + count + " rows hold words")
                        .advice("This is no table of numbers.")
                        .problem();
            }
        }
        throw new IllegalStateException("rows were counted as bad without a bad cell");
    }

    private static Table finish(
            String name,
            Dialect dialect,
            List<Numbers> values,
            List<Optional<TableColumn.BadCell>> firstBad,
            long[] badCount) {
        int count = values.get(0).size();
        if (count < 2) {
            throw InputProblem.in(name)
                    .row(dialect.firstDataLine())
                    .expected("many rows of numbers, one per sample")
                    .found(count == 0 ? "none" : "one row")
                    .advice("Export the whole recording.")
                    .problem();
        }
        List<TableColumn> columns = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            boolean trailing = dialect.headers().get(i).equals("column " + (i + 1));
            TableColumn column = new TableColumn(
                    dialect.headers().get(i), dialect.units().get(i), values.get(i), firstBad.get(i), badCount[i]);
            if (!(trailing && column.finiteCount() == 0)) {
                columns.add(column);
            }
        }
        if (columns.stream().allMatch(column -> column.finiteCount() == 0)) {
            throw InputProblem.in(name)
                    .row(dialect.firstDataLine())
                    .expected("numbers")
                    .found("no number in any of " + count + " rows")
                    .advice("Export the recording again, with its data.")
                    .problem();
        }
        return new Table(name, columns, dialect.firstDataLine());
    }
}
