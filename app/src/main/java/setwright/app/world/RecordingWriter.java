package setwright.app.world;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;

/** Writes a logged table as text that the program, or any other, reads. */
public final class RecordingWriter {
    private RecordingWriter() {}

    /** Where the unit of a column stands. */
    public enum Units {
        /** Nowhere. */
        NONE,
        /** In brackets behind the name. */
        IN_HEADER,
        /** In a second row. */
        IN_ROW
    }

    /**
     * How the text looks.
     *
     * @param delimiter     between cells: comma, semicolon or tab
     * @param decimalComma  whether numbers have a comma where others have a point; not with a comma between cells
     * @param units         where units stand
     * @param gzip          whether it is compressed
     */
    public record Form(char delimiter, boolean decimalComma, Units units, boolean gzip) {
        /** Commas between cells, units in the header, not compressed. */
        public static final Form USUAL = new Form(',', false, Units.IN_HEADER, false);

        public Form {
            if (decimalComma && delimiter == ',') {
                throw new IllegalArgumentException("commas cannot stand between cells and in numbers at once");
            }
        }

        /** Returns a form as files have them; the same seed gives the same one. */
        public static Form random(long seed) {
            Random random = new Random(seed);
            char delimiter = List.of(',', ';', '\t').get(random.nextInt(3));
            boolean comma = delimiter == ';' && random.nextBoolean();
            Units units = List.of(Units.IN_HEADER, Units.IN_ROW).get(random.nextInt(2));
            return new Form(delimiter, comma, units, random.nextBoolean());
        }
    }

    /**
     * Writes a file; one of that name is replaced.
     *
     * @throws IOException when it cannot be written
     */
    public static void write(Path file, LoggedTable table, Form form) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            write(out, table, form);
        }
    }

    /**
     * Writes to a stream, which is left open.
     *
     * @throws IOException when it cannot be written
     */
    public static void write(OutputStream stream, LoggedTable table, Form form) throws IOException {
        GZIPOutputStream zip = form.gzip() ? new GZIPOutputStream(stream) : null;
        BufferedWriter out =
                new BufferedWriter(new OutputStreamWriter(zip == null ? stream : zip, StandardCharsets.UTF_8), 1 << 16);
        try {
            head(table, form).forEach(line -> line(out, line));
            StringBuilder row = new StringBuilder();
            for (int i = 0; i < table.rowCount(); i++) {
                row.setLength(0);
                for (LoggedColumn column : table.columns()) {
                    if (row.length() > 0 || column != table.columns().get(0)) {
                        row.append(form.delimiter());
                    }
                    append(row, column.get(i), column.decimals(), form.decimalComma() ? ',' : '.');
                }
                line(out, row);
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        out.flush();
        if (zip != null) {
            zip.finish();
        }
    }

    private static List<String> head(LoggedTable table, Form form) {
        String names = joined(
                table,
                form,
                column -> form.units() == Units.IN_HEADER
                                && !column.unit().symbol().isEmpty()
                        ? column.name() + " [" + column.unit().symbol() + "]"
                        : column.name());
        return form.units() == Units.IN_ROW
                ? List.of(names, joined(table, form, column -> column.unit().symbol()))
                : List.of(names);
    }

    private static String joined(LoggedTable table, Form form, Function<LoggedColumn, String> cell) {
        return table.columns().stream().map(cell).collect(Collectors.joining(String.valueOf(form.delimiter())));
    }

    private static void line(BufferedWriter out, CharSequence text) {
        try {
            out.append(text).append('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A gap stays empty. Values stand on their decimals already; formatting them one by one by hand is ten times as quick. */
    private static void append(StringBuilder row, double value, int decimals, char point) {
        if (Double.isNaN(value)) {
            return;
        }
        long grid = 1;
        for (int i = 0; i < decimals; i++) {
            grid *= 10;
        }
        long scaled = Math.round(Math.abs(value) * grid);
        if (value < 0.0 && scaled != 0) {
            row.append('-');
        }
        row.append(scaled / grid);
        if (decimals > 0) {
            String rest = String.valueOf(scaled % grid);
            row.append(point).append("0".repeat(decimals - rest.length())).append(rest);
        }
    }
}
