package setwright.app.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import setwright.app.units.UnitSystem;
import setwright.intake.columns.ParquetTable.Kind;
import setwright.intake.columns.TableCells;

/**
 * A table as text: RFC 4180 with line feeds, commas between cells, decimal points, one row of headers with their units.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe in front (OWASP, <i>CSV Injection</i>); numbers are
 * left as they are.
 */
final class CsvForm {
    /** Line feeds besides those named by OWASP: some spreadsheets skip them. */
    private static final String FORMULA_BEGINS = "=+-@\t\r\n";

    private CsvForm() {}

    /** Writes a table; returns how many rows it has. */
    static <R> long write(Writer out, Table<R> table, Material material, UnitSystem units) throws IOException {
        List<Column<R>> columns = table.columns(material);
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out);
        csv.writeRecord(columns.stream().map(column -> header(column, units)).toList());
        Line line = new Line(units);
        long count = 0;
        for (Iterator<R> rows = table.rows(material).iterator(); rows.hasNext(); count++) {
            R row = rows.next();
            line.row();
            for (Column<R> column : columns) {
                line.measure = column.measure();
                column.cell().put(row, line);
            }
            csv.writeRecord(line.cells);
        }
        csv.flush();
        return count;
    }

    /** Returns the header of a column. */
    static String header(Column<?> column, UnitSystem units) {
        return Column.header(
                column.name(), column.kind() == Kind.NUMBER ? column.measure().unit(units) : "");
    }

    /** Returns a text as no spreadsheet takes it for a formula. */
    static String harmless(String text) {
        return !text.isEmpty() && FORMULA_BEGINS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** One row. */
    private static final class Line implements TableCells {
        private final List<String> cells = new ArrayList<>();
        private final UnitSystem units;
        private Measure measure = Measure.NUMBER;

        Line(UnitSystem units) {
            this.units = units;
        }

        @Override
        public void row() {
            cells.clear();
        }

        @Override
        public void text(String text) {
            cells.add(harmless(text));
        }

        @Override
        public void whole(long number) {
            cells.add(String.valueOf(number));
        }

        @Override
        public void number(double number) {
            cells.add(Digits.of(measure.shown(number, units)).toPlainString());
        }

        @Override
        public void truth(boolean truth) {
            cells.add(String.valueOf(truth));
        }

        @Override
        public void empty() {
            cells.add("");
        }
    }
}
