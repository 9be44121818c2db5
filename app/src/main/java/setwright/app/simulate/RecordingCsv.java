package setwright.app.simulate;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import setwright.core.simulation.logger.LoggedColumn;
import setwright.core.simulation.logger.LoggedTable;

/** Writes a recording as a table of text. */
public final class RecordingCsv {
    private static final long[] POWERS = {1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 10_000_000L};
    private static final int FLUSH_AT = 1 << 16;

    private RecordingCsv() {}

    /**
     * Writes a file; compressed when its name ends in {@code .gz}. A file of that name is replaced.
     *
     * @throws IOException when it cannot be written
     */
    public static void write(Path file, LoggedTable table, CsvStyle style) throws IOException {
        try (OutputStream raw = Files.newOutputStream(file);
                OutputStream out =
                        String.valueOf(file.getFileName()).endsWith(".gz") ? new GZIPOutputStream(raw, 1 << 16) : raw;
                Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            write(writer, table, style);
        }
    }

    private static void write(Writer writer, LoggedTable table, CsvStyle style) throws IOException {
        StringBuilder text = new StringBuilder(2 * FLUSH_AT);
        List<LoggedColumn> columns = table.columns();
        for (int c = 0; c < columns.size(); c++) {
            LoggedColumn column = columns.get(c);
            text.append(c == 0 ? "" : String.valueOf(style.delimiter())).append(column.name());
            if (!style.unitsRow() && !column.unit().equals("1")) {
                text.append(" [").append(column.unit()).append(']');
            }
        }
        text.append('\n');
        if (style.unitsRow()) {
            for (int c = 0; c < columns.size(); c++) {
                String unit = columns.get(c).unit();
                text.append(c == 0 ? "" : String.valueOf(style.delimiter())).append(unit.equals("1") ? "-" : unit);
            }
            text.append('\n');
        }
        for (int row = 0; row < table.rows(); row++) {
            for (int c = 0; c < columns.size(); c++) {
                if (c > 0) {
                    text.append(style.delimiter());
                }
                number(text, columns.get(c).values()[row], columns.get(c).decimals(), style.decimalComma());
            }
            text.append('\n');
            if (text.length() > FLUSH_AT) {
                writer.append(text);
                text.setLength(0);
            }
        }
        writer.append(text);
    }

    /** Writes a number with fixed decimals; what is missing stays empty. */
    private static void number(StringBuilder text, double value, int decimals, boolean comma) {
        if (Double.isNaN(value)) {
            return;
        }
        long scaled = Math.round(value * POWERS[decimals]);
        if (scaled < 0) {
            text.append('-');
            scaled = -scaled;
        }
        text.append(scaled / POWERS[decimals]);
        if (decimals > 0) {
            text.append(comma ? ',' : '.');
            String rest = Long.toString(scaled % POWERS[decimals]);
            text.append("0".repeat(decimals - rest.length())).append(rest);
        }
    }
}
