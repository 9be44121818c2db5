package setwright.app.diagnose;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/**
 * A packaged recording as columns of numbers, to be written down again in another form.
 *
 * @param columns  in the order of the file, all of one length
 */
record WrittenTable(List<Column> columns) {
    /** A micrometre on the earth in degrees: no form of a recording carries more noise than another. */
    private static final MathContext DIGITS = new MathContext(14);

    WrittenTable {
        columns = List.copyOf(columns);
    }

    /**
     * One column.
     *
     * @param header  above it
     * @param values  one a row, as printed; NaN where nothing is
     */
    record Column(String header, double[] values) {}

    /** Reads a packaged recording: compressed, with a decimal point. */
    static WrittenTable read(Path file) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().toList();
            String delimiter =
                    Pattern.quote(lines.get(0).replaceAll("[^,;\t]", "").substring(0, 1));
            String[] headers = lines.get(0).split(delimiter, -1);
            double[][] values = new double[headers.length][lines.size() - 1];
            for (int row = 1; row < lines.size(); row++) {
                String[] cells = lines.get(row).split(delimiter, -1);
                for (int c = 0; c < headers.length; c++) {
                    values[c][row - 1] = cells[c].isEmpty() ? Double.NaN : Double.parseDouble(cells[c]);
                }
            }
            List<Column> columns = new ArrayList<>();
            for (int c = 0; c < headers.length; c++) {
                columns.add(new Column(headers[c], values[c]));
            }
            return new WrittenTable(columns);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the values under a header. */
    double[] get(String header) {
        return columns.stream()
                .filter(column -> column.header().equals(header))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no column " + header))
                .values();
    }

    int rows() {
        return columns.get(0).values().length;
    }

    /** Puts another column in the place of one. */
    WrittenTable with(String header, Column other) {
        get(header);
        return new WrittenTable(columns.stream()
                .map(column -> column.header().equals(header) ? other : column)
                .toList());
    }

    WrittenTable shuffled(long seed) {
        List<Column> shuffled = new ArrayList<>(columns);
        Collections.shuffle(shuffled, new Random(seed));
        return new WrittenTable(shuffled);
    }

    /** Keeps some rows. */
    WrittenTable rows(IntPredicate kept) {
        int[] rows = IntStream.range(0, rows()).filter(kept).toArray();
        return new WrittenTable(columns.stream()
                .map(column -> new Column(
                        column.header(),
                        Arrays.stream(rows)
                                .mapToDouble(row -> column.values()[row])
                                .toArray()))
                .toList());
    }

    Path write(Path file) {
        return write(file, ",", false);
    }

    /** Writes it as a text table. */
    Path write(Path file, String delimiter, boolean decimalComma) {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(
                    String.join(delimiter, columns.stream().map(Column::header).toList()));
            out.write('\n');
            for (int row = 0; row < rows(); row++) {
                for (int c = 0; c < columns.size(); c++) {
                    String cell = cell(columns.get(c).values()[row]);
                    out.write(c == 0 ? "" : delimiter);
                    out.write(decimalComma ? cell.replace('.', ',') : cell);
                }
                out.write('\n');
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    private static String cell(double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        return value == Math.rint(value) && Math.abs(value) < 1.0e9
                ? Long.toString((long) value)
                : new BigDecimal(value).round(DIGITS).toPlainString();
    }
}
