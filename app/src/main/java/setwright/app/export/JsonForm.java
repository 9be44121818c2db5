package setwright.app.export;

import java.io.IOException;
import java.io.Writer;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import setwright.intake.columns.ParquetTable.Kind;
import setwright.intake.columns.TableCells;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.json.JsonMapper;

/** A table as JSON of version 1, docs/export.schema.json: its columns with their units, then a row a line. */
final class JsonForm {
    static final int VERSION = 1;

    private static final JsonMapper MAPPER = new JsonMapper();

    private JsonForm() {}

    /** Writes a table; returns how many rows it has. */
    static <R> long write(Writer out, Table<R> table, Material material) throws IOException {
        List<Column<R>> columns = table.columns(material);
        JsonGenerator json = MAPPER.writer().with(rowALine()).createGenerator(out);
        json.writeStartObject();
        json.writeNumberProperty("version", VERSION);
        json.writeStringProperty("table", table.name());
        json.writeArrayPropertyStart("columns");
        columns.forEach(column -> head(json, column));
        json.writeEndArray();
        json.writeArrayPropertyStart("rows");
        Row cells = new Row(json);
        long count = 0;
        for (Iterator<R> rows = table.rows(material).iterator(); rows.hasNext(); count++) {
            R row = rows.next();
            cells.row();
            for (Column<R> column : columns) {
                json.writeName(column.key());
                column.cell().put(row, cells);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.flush();
        out.write('\n');
        out.flush();
        return count;
    }

    private static DefaultPrettyPrinter rowALine() {
        Separators tight = Separators.createDefaultInstance()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withObjectEntrySpacing(Separators.Spacing.AFTER);
        return new DefaultPrettyPrinter(tight)
                .withObjectIndenter(new DefaultPrettyPrinter.NopIndenter())
                .withArrayIndenter(new DefaultIndenter("", "\n"));
    }

    private static void head(JsonGenerator json, Column<?> column) {
        json.writeStartObject();
        json.writeStringProperty("key", column.key());
        json.writeStringProperty("name", column.name());
        json.writeStringProperty("type", type(column));
        if (column.kind() == Kind.NUMBER) {
            json.writeStringProperty("unit", column.siUnit());
        }
        json.writeEndObject();
    }

    /** Returns a column's type as JSON Schema has it. */
    static String type(Column<?> column) {
        return switch (column.kind()) {
            case TEXT -> "string";
            case WHOLE -> "integer";
            case NUMBER -> "number";
            case TRUTH -> "boolean";
        };
    }

    /** Returns a column's type as docs/export.md has it. */
    static String words(Column<?> column) {
        return column.kind() == Kind.TRUTH
                ? "yes or no"
                : column.kind() == Kind.WHOLE
                        ? "whole number"
                        : column.kind().name().toLowerCase(Locale.ROOT);
    }

    /** One row. */
    private record Row(JsonGenerator json) implements TableCells {
        @Override
        public void row() {
            json.writeStartObject();
        }

        @Override
        public void text(String text) {
            json.writeString(text);
        }

        @Override
        public void whole(long number) {
            json.writeNumber(number);
        }

        @Override
        public void number(double number) {
            json.writeNumber(Digits.of(number));
        }

        @Override
        public void truth(boolean truth) {
            json.writeBoolean(truth);
        }

        @Override
        public void empty() {
            json.writeNull();
        }
    }
}
